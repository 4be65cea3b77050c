// Package frame has the calculators of the frame section, one file each: what a
// geometry chart says, what a change of a part or of the sag does to it, how the
// weight lies on a slope, and which of several sizes suits a rider.
package frame
