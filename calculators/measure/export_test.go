package measure

// For the tests of repeated readings.
var (
	OfMedian  = ofMedian
	Student95 = student95
)
