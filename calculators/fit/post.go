package fit

// A dropper post has three parts that matter here. The collar stands on the seat
// tube; the tube that moves comes out of it by the travel; the head on top holds the
// saddle's rails. All lengths are along the seat line, in mm.

// Exposed returns how far the rails are above the seat tube's top edge, in mm.
//
//	saddle height − seat tube − saddle stack
//
// saddleHeight: bottom bracket to the saddle's top. seatTube: bottom bracket to the
// tube's top edge. saddleStack: rails to the saddle's top.
//
// Source: plain lengths; common practice.
func Exposed(saddleHeight, seatTube, saddleStack float64) float64 {
	return saddleHeight - seatTube - saddleStack
}

// TravelForRoom returns the longest travel, in mm, that the room above the frame
// allows: what the post's fixed parts leave of it.
//
//	exposed − hardware
//
// exposed: see Exposed. hardware: height of the post's collar and head.
//
// Source: plain lengths; common practice.
func TravelForRoom(exposed, hardware float64) float64 { return exposed - hardware }

// TravelForDepth returns the longest travel, in mm, of a post that is built like a
// known one, so that its lowest point just clears what is in the seat tube.
//
//	travel + (free depth + exposed − length) / 2
//
// travel and length are the known post's; its length goes from the rails down to
// its lowest point, actuator included. A post with more travel is longer by that
// above the collar and by as much again below it, hence the half.
//
// Source: plain lengths; common practice.
func TravelForDepth(travel, length, freeDepth, exposed float64) float64 {
	return travel + (freeDepth+exposed-length)/2
}
