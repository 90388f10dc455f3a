package send

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"path"
	"strings"

	"github.com/minio/minio-go/v7"
	"github.com/minio/minio-go/v7/pkg/credentials"
)

// tries is how often a request to object storage is made that fails for no fault of ours.
const tries = 3

// bucket is a target in object storage. An object is replaced whole, by its storage: who
// reads it meanwhile has the old one.
type bucket struct {
	client           *minio.Client
	name, prefix, at string
	packed           bool
}

// bucketAt is the target of an address such as s3://BUCKET/PREFIX.
func bucketAt(at *url.URL, a Access) (Target, error) {
	endpoint := a.Endpoint
	if endpoint == "" {
		endpoint = "https://s3.amazonaws.com"
	}
	to, err := url.Parse(endpoint)
	if err != nil || to.Host == "" || to.User != nil || (to.Scheme != "https" && to.Scheme != "http") || strings.Trim(to.Path, "/") != "" || to.RawQuery != "" {
		return nil, fmt.Errorf("%w; the endpoint of object storage is https:// and the name of a machine, with nothing behind it", ErrAddress)
	}
	// Neither is ever printed: the library reads them and signs with them.
	keys := credentials.NewChainCredentials([]credentials.Provider{&credentials.EnvAWS{}, &credentials.FileAWSCredentials{}})
	if value, err := keys.GetWithContext(nil); err != nil || value.AccessKeyID == "" || value.SecretAccessKey == "" {
		return nil, errors.New("there is no key for object storage: set AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY, or write them into ~/.aws/credentials")
	}
	transport := http.DefaultTransport.(*http.Transport).Clone()
	transport.DisableCompression = true // what is stored is read, as it is stored
	transport.ResponseHeaderTimeout = a.patience()
	client, err := minio.New(to.Host, &minio.Options{Creds: keys, Secure: to.Scheme == "https", Region: a.Region, Transport: transport, MaxRetries: tries})
	if err != nil {
		return nil, fmt.Errorf("%w; %v", ErrAddress, err)
	}
	b := &bucket{client: client, name: at.Host, at: to.Host, packed: a.Gzip}
	if b.prefix = strings.Trim(path.Clean("/"+at.Path), "/"); b.prefix != "" {
		b.prefix += "/"
	}
	return b, nil
}

// Forms are the calendar alone, as it is, or compressed, which every reader then has to
// understand: object storage hands out what it has, whatever is asked for.
func (b *bucket) Forms() []Form {
	if b.packed {
		return []Form{{Packed: true, Encoding: "gzip"}}
	}
	return []Form{{}}
}

// Hold keeps nobody away: storage has no locks. Of two publishes at once each object is
// the last one's, whole.
func (b *bucket) Hold() (func(), error) { return func() {}, nil }
func (b *bucket) Remarks() []string     { return nil }
func (b *bucket) Close() error          { return nil }

func (b *bucket) List() (map[string]string, error) {
	all := map[string]string{}
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	for _, of := range []minio.ListObjectsOptions{{Prefix: b.prefix}, {Prefix: b.prefix + private + "/", Recursive: true}} {
		for o := range b.client.ListObjects(ctx, b.name, of) {
			if o.Err != nil {
				return nil, b.words("cannot be listed", o.Err)
			}
			if p := strings.TrimPrefix(o.Key, b.prefix); inPlace(p) {
				all[p] = strings.Trim(o.ETag, `"`)
			}
		}
	}
	return all, nil
}

func (b *bucket) Read(p string) ([]byte, error) {
	o, err := b.client.GetObject(context.Background(), b.name, b.prefix+p, minio.GetObjectOptions{})
	if err != nil {
		return nil, b.words(Shown(p)+" cannot be read", err)
	}
	defer o.Close()
	text, err := io.ReadAll(io.LimitReader(o, most))
	if err != nil && minio.ToErrorResponse(err).Code == "NoSuchKey" {
		return nil, nil
	}
	if err != nil {
		return nil, b.words(Shown(p)+" cannot be read", err)
	}
	return text, nil
}

func (b *bucket) Put(files []File, sending func(int), stored func(int, string)) error {
	for i := range files {
		f := &files[i]
		sending(i)
		info, err := b.client.PutObject(context.Background(), b.name, b.prefix+f.Path, bytes.NewReader(f.Text), int64(len(f.Text)), minio.PutObjectOptions{
			ContentType: f.Type, CacheControl: f.Cache, ContentEncoding: f.Encoding,
			SendContentMd5: true, DisableMultipart: true, // whole, and as it was sent, or not at all
		})
		if err != nil {
			return b.words(Shown(f.Path)+" cannot be stored", err)
		}
		stored(i, strings.Trim(info.ETag, `"`))
	}
	return nil
}

func (b *bucket) Remove(p string) error {
	if err := b.client.RemoveObject(context.Background(), b.name, b.prefix+p, minio.RemoveObjectOptions{}); err != nil {
		return b.words(Shown(p)+" cannot be removed", err)
	}
	return nil
}

// words says what storage answered, by its codes.
func (b *bucket) words(what string, err error) error {
	switch code := minio.ToErrorResponse(err).Code; strings.ToLower(code) {
	case "nosuchbucket":
		return fmt.Errorf("there is no bucket %q at %s: make it there, or name another", b.name, b.at)
	case "invalidaccesskeyid", "signaturedoesnotmatch", "invalidclienttokenid", "invalidtoken", "expiredtoken", "xadminusernotfound":
		return fmt.Errorf("%s does not take the key (it says %s): is it the key of that storage, whole, and still good?", b.at, code)
	case "accessdenied", "allaccessdisabled", "accountproblem":
		return fmt.Errorf("%s: the key may not do that in the bucket %q; it has to be let list, read, put and delete there", what, b.name)
	case "authorizationheadermalformed", "permanentredirect", "illegallocationconstraintexception":
		return fmt.Errorf("%s: the bucket %q is in another region: set AWS_REGION to it", what, b.name)
	case "quotaexceeded", "xminiostoragefull", "insufficientstorage":
		return fmt.Errorf("%s: the storage is full", what)
	}
	var u *url.Error
	if errors.As(err, &u) {
		return unreached(b.at, u.Err)
	}
	return fmt.Errorf("%s: %w", what, err)
}
