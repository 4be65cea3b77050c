package browser

import (
	"context"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
)

// A slow phone: 1.6 Mbit/s, 150 ms to and fro, a quarter of this machine's speed.
var slowPhone = chromedp.Func(func(ctx context.Context, _ *chromedp.Target) error {
	slow := network.Conditions{Latency: 150, DownloadThroughput: 200_000, UploadThroughput: 90_000}
	if _, err := chromedp.Call(ctx, network.EmulateNetworkConditionsByRule,
		network.EmulateNetworkConditionsByRuleParams{
			MatchedNetworkConditions: []*network.Conditions{&slow}}); err != nil {
		return err
	}
	_, err := chromedp.Call(ctx, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: 4})
	return err
})

// TestWhatIsTypedBeforeTheEngineComesIsAnswered types into a chapter on a slow phone as
// soon as its form is there, long before the engine. The bound on the time is generous:
// it is for a shared machine, and fails when the whole engine is waited for.
func TestWhatIsTypedBeforeTheEngineComesIsAnswered(t *testing.T) {
	b := open(t, "/about:blank") // 404: warms the browser
	b.mayError = true
	b.do(emptied, slowPhone)
	start := time.Now()
	b.do(chromedp.Navigate(server.URL + chapter))
	b.until(`document.querySelector(".bench fieldset:not(:disabled)")`)
	if !eval[bool](b, `!!document.querySelector(".bench .offline") &&
		document.querySelector("[name=inseam]").value === ""`) {
		t.Error("the engine was there before the form: nothing is tested")
	}
	form := time.Since(start)
	b.typed("inseam", "840")
	b.until(`document.querySelector(".bench .whose").textContent === "Your numbers"`)
	answered := time.Since(start)
	const where = `document.querySelector("[name=inseam]").value + " " + document.activeElement.name`
	if got := eval[string](b, where); got != "840 inseam" {
		t.Errorf("after the first answer the field and the focus are %q", got)
	}
	kb := eval[float64](b, `["navigation", "resource"].flatMap((type) => performance.getEntriesByType(type)).reduce(
		(sum, x) => sum + x.encodedBodySize, 0) / 1000`)
	t.Logf("form %.1f s, answer %.1f s after the navigation, %.0f KB before it", form.Seconds(), answered.Seconds(), kb)
	if kb > 950 { // of engines at brotli 6, as tests publish them; 11 saves 115
		t.Errorf("%.0f KB were loaded before the first answer", kb)
	}
	if answered > 15*time.Second {
		t.Errorf("the first answer took %.1f s", answered.Seconds())
	}
}
