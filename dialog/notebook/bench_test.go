package notebook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"
)

// bigState is a state of about two kilobytes, as a plan with all its inputs is.
func bigState(i int) json.RawMessage {
	return json.RawMessage(fmt.Sprintf(`{"turn":%d,"said":[%s"end"]}`, i, strings.Repeat(`{"key":"stitch_gauge","value":"563/20","unit":"cm"},`, 40)))
}

// BenchmarkAppend times a kept turn against appending and syncing the same
// bytes with nothing else, turn about on the same disk; "x-bare" is the ratio.
// On a disk in memory there is no sync to wait for and the ratio says little.
func BenchmarkAppend(b *testing.B) {
	dir := b.TempDir()
	book, _, err := Open(dir, "p")
	if err != nil {
		b.Fatal(err)
	}
	defer book.Close()
	bare, err := os.OpenFile(filepath.Join(dir, "bare"), os.O_WRONLY|os.O_APPEND|os.O_CREATE, 0o600)
	if err != nil {
		b.Fatal(err)
	}
	defer bare.Close()
	s := bigState(1)
	var line bytes.Buffer
	if _, err := encode(&line, Entry{1, noon, "neck 42 cm", s}); err != nil {
		b.Fatal(err)
	}
	var ours, theirs time.Duration
	b.ReportAllocs()
	for b.Loop() {
		start := time.Now()
		if err := book.Append("neck 42 cm", s, noon); err != nil {
			b.Fatal(err)
		}
		mid := time.Now()
		_, werr := bare.Write(line.Bytes())
		serr := bare.Sync()
		if werr != nil || serr != nil {
			b.Fatal(werr, serr)
		}
		ours, theirs = ours+mid.Sub(start), theirs+time.Since(mid)
	}
	b.ReportMetric(float64(ours.Nanoseconds())/float64(b.N), "ns/append")
	b.ReportMetric(float64(ours)/float64(theirs), "x-bare")
}

// BenchmarkOpen opens notebooks of 1,000 and 10,000 turns of about two
// kilobytes: the second should cost ten times the first, and stay within half
// a second and 64 MiB.
func BenchmarkOpen(b *testing.B) {
	for _, n := range []int{1000, 10000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			dir := b.TempDir()
			var file bytes.Buffer
			for i := 1; i <= n; i++ {
				if _, err := encode(&file, Entry{i, noon, "neck 42 cm", bigState(i)}); err != nil {
					b.Fatal(err)
				}
			}
			if err := os.WriteFile(filepath.Join(dir, "p"+ending), file.Bytes(), 0o600); err != nil {
				b.Fatal(err)
			}
			size := file.Len()
			file = bytes.Buffer{}
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			for b.Loop() {
				book, r, err := Open(dir, "p")
				if err != nil || r.Entries != n {
					b.Fatal(r, err)
				}
				book.Close()
			}
			runtime.ReadMemStats(&after)
			b.ReportMetric(float64(size)/(1<<20), "MiB-file")
			b.ReportMetric(float64(after.TotalAlloc-before.TotalAlloc)/float64(b.N)/(1<<20), "MiB/open")
		})
	}
}
