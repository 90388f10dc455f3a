module vivary

go 1.25.0

require (
	github.com/agext/levenshtein v1.2.1
	github.com/apparentlymart/go-textseg/v15 v15.0.0
	github.com/arran4/golang-ical v0.3.4
	github.com/chromedp/cdproto v0.0.0-20250724212937-08a3db8b4327
	github.com/chromedp/chromedp v0.14.2
	github.com/emersion/go-sasl v0.0.0-20241020182733-b788ff22d5a6
	github.com/emersion/go-smtp v0.26.0
	github.com/emersion/go-webdav v0.6.0
	github.com/fsnotify/fsnotify v1.9.0
	github.com/gofrs/flock v0.13.0
	github.com/google/uuid v1.6.0
	github.com/hashicorp/hcl/v2 v2.25.0
	github.com/minio/minio-go/v7 v7.2.1
	github.com/pkg/sftp v1.13.12
	github.com/prometheus/client_golang v1.23.2
	github.com/robfig/cron/v3 v3.0.1
	github.com/rogpeppe/go-internal v1.16.0
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.3
	github.com/spf13/afero v1.15.0
	github.com/teambition/rrule-go v1.8.2
	github.com/wneessen/go-mail v0.7.2
	github.com/zclconf/go-cty v1.19.0
	go.yaml.in/yaml/v3 v3.0.4
	golang.org/x/crypto v0.54.0
	golang.org/x/net v0.56.0
	golang.org/x/text v0.40.0
	gonum.org/v1/gonum v0.17.0
	rsc.io/qr v0.2.0
)

require github.com/creachadair/mds v0.26.1 // indirect

require (
	github.com/apparentlymart/go-textseg/v17 v17.0.1 // indirect
	github.com/beorn7/perks v1.0.1 // indirect
	github.com/cespare/xxhash/v2 v2.3.0 // indirect
	github.com/chromedp/sysutil v1.1.0 // indirect
	github.com/creachadair/jrpc2 v1.3.5
	github.com/dustin/go-humanize v1.0.1 // indirect
	github.com/emersion/go-ical v0.0.0-20240127095438-fc1c9d8fb2b6 // indirect
	github.com/go-json-experiment/json v0.0.0-20250725192818-e39067aee2d2 // indirect
	github.com/gobwas/httphead v0.1.0 // indirect
	github.com/gobwas/pool v0.2.1 // indirect
	github.com/gobwas/ws v1.4.0 // indirect
	github.com/google/go-cmp v0.7.0 // indirect
	github.com/klauspost/compress v1.18.6 // indirect
	github.com/klauspost/cpuid/v2 v2.2.11 // indirect
	github.com/klauspost/crc32 v1.3.0 // indirect
	github.com/kr/fs v0.1.0 // indirect
	github.com/minio/crc64nvme v1.1.1 // indirect
	github.com/minio/md5-simd v1.1.2 // indirect
	github.com/mitchellh/go-wordwrap v1.0.1 // indirect
	github.com/munnerz/goautoneg v0.0.0-20191010083416-a7dc8b61c822 // indirect
	github.com/philhofer/fwd v1.2.0 // indirect
	github.com/prometheus/client_model v0.6.2 // indirect
	github.com/prometheus/common v0.66.1 // indirect
	github.com/prometheus/procfs v0.16.1 // indirect
	github.com/rs/xid v1.6.0 // indirect
	github.com/tinylib/msgp v1.6.1 // indirect
	github.com/zeebo/xxh3 v1.1.0 // indirect
	go.yaml.in/yaml/v2 v2.4.2 // indirect
	golang.org/x/mod v0.37.0 // indirect
	golang.org/x/sync v0.22.0 // indirect
	golang.org/x/sys v0.47.0 // indirect
	golang.org/x/tools v0.47.0 // indirect
	google.golang.org/protobuf v1.36.10 // indirect
	gopkg.in/ini.v1 v1.67.2 // indirect
)
