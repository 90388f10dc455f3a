// Package climate is the physics of one small enclosure standing in a room: how
// much heat and water it loses, what a heater or a spray bottle can do about it,
// and how fast it cools when the mains fails. It knows nothing of plans, species
// or wording, and it is no simulation: every answer is a closed form or a short
// root search, given as a low, likely and high value.
//
// All functions are pure and allocate nothing. Dimensions must be positive and
// finite; other input gives infinities or NaN, never a panic, and no verdict
// from such a value is [Holds].
//
// The model treats the inside as one well-mixed volume of air. A basking spot,
// a burrow or the layer below a lid can be several kelvins away from it.
package climate
