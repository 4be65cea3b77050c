package panel_test
import ("testing";"os";"plumbline/calculators/catalog";"plumbline/calculators/panel")
func TestZZ(t *testing.T){
 c:=catalog.Named("saddle-height")
 os.WriteFile("/tmp/w/bench.html",[]byte(panel.Bench(c,"1",nil)),0o644)
 r:=panel.Answer(catalog.All(),panel.Ask{Name:"saddle-height",Record:"inseam=830&crank-length=abc",Query:"inseam=32+3/4",Bare:"in",Units:"in",Whole:true})
 t.Logf("%+v",r)
 r=panel.Answer(catalog.All(),panel.Ask{Name:"saddle-height",Record:"inseam=830",Bare:"in",Units:"in",Whole:true})
 t.Logf("%+v",r)
}
