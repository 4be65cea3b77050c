package fit

// SeatedElbow is how far a seated rider is taken to bend the elbows, in degrees; a
// straight arm is 0. Common practice: soft, not locked.
const SeatedElbow = 30
