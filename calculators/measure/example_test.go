package measure_test

import (
	"fmt"

	"plumbline/calculators/measure"
)

func ExampleQuantity_Parse() {
	g, _, _ := measure.Inseam.Parse("32 3/4 in ± 3 mm", nil)
	fmt.Println(measure.Inseam.Amount(g.Value).Say(nil), "±", g.Error)

	_, why, _ := measure.Inseam.Parse("83", nil)
	fmt.Println(why.Say(nil))
	// Output:
	// 832 mm ± 3
	// 83 mm is not possible for “Inside leg”; 275 mm to 1575 mm is. Did you mean 83 cm?
}

func ExampleNearest() {
	fmt.Println(measure.Nearest("inside_leg").Key, measure.Nearest("saddel-height").Key)
	// Output: inseam saddle-height
}
