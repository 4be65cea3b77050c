package record_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/record"
)

func TestARecordIsPartedAndJoined(t *testing.T) {
	r, _ := record.Decode(
		"name=Rowan&bike=Trail&note=wet&date=2026-11-24&u=cm&inseam=830&reach=460&estimated=inseam&odd=1",
	)
	rider, bike := r.Part()
	assert.Equal(t, "name=Rowan&inseam=830&estimated=inseam", rider.Fragment())
	assert.Equal(t, "bike=Trail&note=wet&date=2026-11-24&reach=460&odd=1", bike.Fragment())
	b := record.Single(r)
	again, plain := b.Plain()
	assert.True(t, plain)
	assert.Equal(t, r.Fragment(), again.Fragment())
	b.Riders[0].Bikes[0].Log = []record.Change{{On: "2026-01-01", Note: "x"}}
	_, plain = b.Plain()
	assert.False(t, plain, "a log is more than a record")
}

// A bike that was changed twice, with a third change planned.
func TestAStateIsTheRecordBeforeWhatWasMadeLater(t *testing.T) {
	r, _ := record.Decode(
		"inseam=830&saddle-height=742&saddle-height.was=737&from=saddle-height.knee-bend" +
			"&bar-width=760&bar-width.was=780&bar-width.done=2026-10-05" +
			"&stem-length=45&from=stem-length.stem-choice&pedals=clip",
	)
	log := []record.Change{
		{On: "2026-09-12", Key: "saddle-height", Value: "722", Was: "710"},
		{On: "2026-10-01", Key: "saddle-height", Value: "737", Was: "722"},
		{On: "2026-10-02", Note: "rain"},
		{On: "2026-10-05", Key: "bar-width", Value: "760", Was: "780"},
		{On: "2026-10-06", Key: "pedals", Value: "clip"},
	}
	assert.Equal(
		t,
		"inseam=830&saddle-height=737&bar-width=760&pedals=clip",
		record.Now(r).Fragment(),
		"no plan is made yet",
	)
	for day, want := range map[string]string{
		"2026-09-11": "saddle-height=710&bar-width=780", "2026-09-12": "saddle-height=722&bar-width=780",
		"2026-10-04": "saddle-height=737&bar-width=780", "2026-10-05": "saddle-height=737&bar-width=760",
		"2026-10-06": "saddle-height=737&bar-width=760&pedals=clip",
	} {
		assert.Equal(t, "date="+day+"&inseam=830&"+want, record.State(r, log, day).Fragment(), day)
	}
	next := record.Next(r)
	assert.Equal(t, "742", next.At("saddle-height").Text)
	assert.Equal(t, "", next.At("saddle-height").Was)
	assert.Equal(t, "737", r.At("saddle-height").Was, "the record itself is left alone")
}
