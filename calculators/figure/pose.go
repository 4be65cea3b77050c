package figure

// Pose is a rider's joints on the drawing, as a posture model finds them; the
// near side, and the far leg. Points that were not solved are left zero, and
// what hangs on them is not drawn.
type Pose struct {
	Hip, Knee, Ankle, Heel, Ball, Toe  Point
	FarKnee, FarAnkle, FarHeel, FarToe Point
	Shoulder, Elbow, Hand, Head        Point
	// Sole is how far the shoe's underside lies below heel, ball and toe, mm.
	Sole float64
	Bare bool // no shoe
}
