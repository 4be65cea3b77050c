package geometry

// Fault says why a bike with the given numbers cannot exist. Faults are
// constants, so a caller may compare them and say the same in the reader's
// words.
type Fault string

// Error returns the reason as a sentence without a full stop.
func (f Fault) Error() string { return string(f) }

// The reasons why a chart or a change has no bike.
const (
	// NotANumber: a length or an angle is not a finite number.
	NotANumber Fault = "a length or angle is not a number"
	// HeadAngleRange: a head angle must lie above 0 and at most at 90 degrees,
	// before and after a change.
	HeadAngleRange Fault = "the head angle must be above 0 and at most 90 degrees"
	// SeatAngleRange: a seat angle must lie between 0 and 180 degrees, and its
	// level above the bottom bracket.
	SeatAngleRange Fault = "the seat angle must be between 0 and 180 degrees, read above the bottom bracket"
	// RadiusRange: a wheel needs a radius above 0.
	RadiusRange Fault = "a wheel's radius must be above 0"
	// ChainstayTooShort: the rear axle's drop alone is as long as the chainstay.
	ChainstayTooShort Fault = "the chainstay is shorter than the height between bottom bracket and rear axle"
	// DropRange: wheels so unequal that no axle heights leave the stated drop.
	DropRange Fault = "no axle heights leave this bottom-bracket drop with wheels so unequal"
	// ForkTooShort: the head tube's top is not above the front axle's foot on
	// the steering axis.
	ForkTooShort Fault = "the head tube's top lies below the front axle"
	// WheelsOverlap: the wheels would stand in one another's place or the front
	// axle behind the rear.
	WheelsOverlap Fault = "the front axle does not lie ahead of the rear axle"
	// SeatTubeRange: the seat tube's own angle must lie between 0 and 180
	// degrees.
	SeatTubeRange Fault = "the seat tube's own angle must be between 0 and 180 degrees"
	// FrontCentreTooShort: the front axle's height alone is as long as its
	// distance from the bottom bracket.
	FrontCentreTooShort Fault = "the distance to the front axle is shorter than " +
		"the height between bottom bracket and front axle"
	// HeadOutOfReach: the distances to the head tube's top do not meet.
	HeadOutOfReach Fault = "the two distances to the head tube's top do not meet"
)
