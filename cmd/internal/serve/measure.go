package serve

import (
	"net/http"
	"strconv"
	"time"

	"github.com/prometheus/client_golang/prometheus"
	"github.com/prometheus/client_golang/prometheus/collectors"
	"github.com/prometheus/client_golang/prometheus/promhttp"

	"vivary/compile"
	"vivary/plan/finding"
)

// Measures are counts and times for whoever watches the server. No name of an animal, a
// keeper or an address is in them.
type Measures struct {
	registry *prometheus.Registry
	requests *prometheus.CounterVec
	seconds  *prometheus.HistogramVec
	builds   *prometheus.CounterVec
	building prometheus.Histogram
	last     prometheus.Gauge
	findings *prometheus.GaugeVec
	notes    *prometheus.CounterVec

	feed map[int]prometheus.Counter
	took prometheus.Observer
}

func newMeasures() *Measures {
	m := &Measures{
		registry: prometheus.NewRegistry(),
		requests: prometheus.NewCounterVec(prometheus.CounterOpts{Name: "vivary_requests_total", Help: "Requests, by what was asked for and the status of the answer."}, []string{"what", "status"}),
		seconds:  prometheus.NewHistogramVec(prometheus.HistogramOpts{Name: "vivary_request_seconds", Help: "How long answers took.", Buckets: prometheus.ExponentialBuckets(0.0001, 4, 8)}, []string{"what"}),
		builds:   prometheus.NewCounterVec(prometheus.CounterOpts{Name: "vivary_builds_total", Help: "Builds, by how they ended: good, refused or failed."}, []string{"outcome"}),
		building: prometheus.NewHistogram(prometheus.HistogramOpts{Name: "vivary_build_seconds", Help: "How long builds took.", Buckets: prometheus.ExponentialBuckets(0.01, 3, 8)}),
		last:     prometheus.NewGauge(prometheus.GaugeOpts{Name: "vivary_last_good_build_timestamp_seconds", Help: "When calendars were last written or found unchanged, as a Unix time."}),
		findings: prometheus.NewGaugeVec(prometheus.GaugeOpts{Name: "vivary_findings", Help: "Findings of the last build, by severity."}, []string{"severity"}),
		notes:    prometheus.NewCounterVec(prometheus.CounterOpts{Name: "vivary_notes_total", Help: "Forms of pages that wrote to a log, by what came of them."}, []string{"outcome"}),
		feed:     map[int]prometheus.Counter{},
	}
	m.registry.MustRegister(m.requests, m.seconds, m.builds, m.building, m.last, m.findings, m.notes,
		collectors.NewGoCollector(), collectors.NewProcessCollector(collectors.ProcessCollectorOpts{}))
	for _, status := range []int{http.StatusOK, http.StatusNotModified} { // most answers by far
		m.feed[status] = m.requests.WithLabelValues("feed", strconv.Itoa(status))
	}
	m.took = m.seconds.WithLabelValues("feed")
	return m
}

// Handler answers with the measures.
func (m *Measures) Handler() http.Handler {
	return promhttp.HandlerFor(m.registry, promhttp.HandlerOpts{})
}

func (m *Measures) answered(what string, status int, took time.Duration) {
	if c := m.feed[status]; c != nil && what == "feed" {
		c.Inc()
		m.took.Observe(took.Seconds())
		return
	}
	m.requests.WithLabelValues(what, strconv.Itoa(status)).Inc()
	m.seconds.WithLabelValues(what).Observe(took.Seconds())
}

// built counts a build; r is nil where nothing could be read.
func (m *Measures) built(how string, took time.Duration, r *compile.Result) {
	m.builds.WithLabelValues(how).Inc()
	m.building.Observe(took.Seconds())
	if how == "good" {
		m.last.SetToCurrentTime()
	}
	if r == nil {
		return
	}
	n := map[finding.Severity]int{}
	for i := range r.Findings {
		n[r.Findings[i].Severity]++
	}
	for _, s := range []finding.Severity{finding.Danger, finding.Error, finding.Urgent, finding.Caution, finding.Advice} {
		m.findings.WithLabelValues(s.String()).Set(float64(n[s]))
	}
}

func (m *Measures) noted(how string) { m.notes.WithLabelValues(how).Inc() }
