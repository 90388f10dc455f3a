package plan

import (
	"vivary/schema"
	"vivary/schema/quantity"
)

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

// SurfaceRange returns what the warmest surface may have without harm, in °C, and the
// figure that decides of v: below the range the surface that is needed, above it the
// surface's own limit; else the air's. The figure is nil for a sheet without limits.
func SurfaceRange(s *SpeciesSheet, v float64) (quantity.Range, *Figure) {
	hard := s.Figure(schema.FigureTemperatureHard, "")
	if hard == nil {
		return quantity.Range{}, nil
	}
	r, low, high := hard.Range, hard, hard
	r.High = SurfaceMax(s)
	if need := s.Figure(schema.FigureSpotNeeded, ""); need != nil {
		r.Low, low = need.Range.Low, need
	}
	if f := s.Figure(schema.FigureSurfaceMax, ""); f != nil && f.Range.High <= r.High {
		high = f
	}
	if v > r.High {
		return r, high
	}
	return r, low
}
