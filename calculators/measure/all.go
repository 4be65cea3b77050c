package measure

import "slices"

// all is every quantity in the order in which a record of them is shown: rider,
// feet, frame, wheels, suspension, saddle, post, cockpit, posture, choices.
var all = []*Quantity{
	Stature, Mass, Inseam, TrochanterHeight, KneeHeight, TrunkLength, ArmLength, ArmSpan, ShoulderWidth,
	ThighLength, ShankLength, FrontHipPoints, HipWidth, SitBoneWidth, HandLength, FingerLength, PushUpWidth,
	LegDifference,
	LungeLeft, LungeRight, KneeShortLeft, KneeShortRight, HipBend, SitAndReach,

	FootLength, OtherFoot, HeelToBallInner, HeelToBallOuter, CleatBehindBall, PedalHeight, SoleHeight,
	QFactor, FootOffset, PedalWidth, PedalThickness, PedalSpacer, CleatShift, ToeOut, ShoeSize, HeelCup, PedalThread,
	ToeOutLeft, ToeOutRight, CleatAngleLeft, CleatAngleRight, PedalFloat, ArmSetIn, StayWidth, RearEndWidth,

	Reach, Stack, HeadAngle, SeatAngle, SeatAngleHeight, SeatTubeAngle, SeatTubeLength, StandOver,
	HeadTubeLength, LowerHeadset, ForkLength, ForkOffset, Chainstay, BBDrop, BBHeight, Wheelbase,
	FrontCentre, EffectiveTopTube, BBToHeadTube, RearAxleToHeadTube, FrontAxleHeight, RearAxleHeight, BikeMass,
	Load, Sizes,
	NewForkLength, NewForkOffset, NewFrontRim, NewRearRim, NewFrontTyre, NewRearTyre, AngleHeadset, HeadsetPivot,
	NewReach, NewStack, NewHeadAngle, NewSeatAngle, NewSeatAngleHeight, NewSeatTubeAngle, NewCrankLength,
	NewPedalHeight, NewSoleHeight, NewCleatBehindBall, NewPostOffset, NewHeadsetHeight, NewSpacersLimit, NewBarRise,
	NewBarSweep,
	NewForkTravel, NewRearTravel, NewChainstay, NewBBDrop, NewSeatTubeLength, NewStemLength,

	FrontRim, RearRim, FrontTyre, RearTyre, FrontRadius, RearRadius, CrankLength,

	ForkTravel, RearTravel, SagFront, SagRear, ShockStroke, Grade, COMForward, COMHeight,
	ScaleFront, ScaleRear, ScaleRise, ScaleRearRaised,

	SaddleHeight, SaddleNose, SaddleSetback, NoseSetback, SaddleFloor, SaddleStack, SaddleTilt, RailShift,
	NewSaddleSetback, SitBoneEdges, TargetKnee, KneeReading,

	TravelPost, PostLength, PostHead, PostCollar, PostOffset, PostActuator, PostDiameter, InsertionPost,
	InsertionFrame, FreeDepth,

	StemLength, StemAngle, StemClampHeight, Spacers, SpacersAbove, SpacersLimit, SteererLength, HeadsetHeight,
	BarRise, BarSweep, BackSweep, BarRoll, BarWidth, BarLimit, BarStraight, ControlsWidth, GripLength,
	GripDiameter,
	GripX, GripY, GripFloor, NoseToGrip, LeverReach, LeverLength, LeverInset, LeverAngle, MoveX, MoveY, TreeGap,

	TrunkAngle, SeatedTrunk, ElbowBend, StandingKnee,

	First, Second, Third, Score, ScoresBefore, ScoresAfter,

	Sex, Growing, Pedals, NewPedals, ForkMeasure, SitBoneRead, Leaning, KneeRead, SagRead, Helped, DifferenceFound,
	WarningSign,
	SizeSystem, Feeling, Wanted, BikeKind, Riding,
}

// All returns every quantity, in the order in which people fill them in.
func All() []*Quantity { return slices.Clone(all) }

// Named returns the quantity with that key, or nil.
func Named(key string) *Quantity {
	for _, q := range all {
		if q.Key == key {
			return q
		}
	}
	return nil
}

// Carried lists the keys of what a rider takes along to another bike: body and
// shoes.
func Carried() (keys []string) {
	for _, q := range all {
		if q.Of != OfBike {
			keys = append(keys, q.Key)
		}
	}
	return keys
}
