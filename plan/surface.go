package plan

import "vivary/schema"

// surfaceAboveAir is how far a surface may at most be past the air that is borne, in K: as
// for a gecko and for tropical scorpions. It decides for species that bear little warmth.
// Judgement.
const surfaceAboveAir = 8.0

// SurfaceMax returns how hot a surface may get that the animals of a sheet can touch, in °C:
// as it states, else the usual one, and not far past the air that harms.
func SurfaceMax(s *SpeciesSheet) float64 {
	most := schema.UsualSurfaceMax
	if f := s.Figure(schema.FigureSurfaceMax, ""); f != nil {
		most = f.Range.High
	}
	if hard := s.Figure(schema.FigureTemperatureHard, ""); hard != nil {
		most = min(most, hard.Range.High+surfaceAboveAir)
	}
	return most
}
