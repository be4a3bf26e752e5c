package main

import (
	"bytes"
	"context"
	"crypto/sha256"
	"errors"
	"fmt"
	"net"
	"net/http"
	"os"
	"os/signal"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
)

// handler serves the page, and beside it the worker that keeps it on the phone.
func handler(page []byte) (http.Handler, error) {
	worker, err := parts.ReadFile("page/worker.js")
	if err != nil {
		return nil, err
	}
	version := fmt.Sprintf("%x", sha256.Sum256(page))[:16]
	worker = bytes.ReplaceAll(worker, []byte("{{version}}"), []byte(version))
	mux := http.NewServeMux()
	send := func(path, kind string, content []byte) {
		mux.HandleFunc("GET "+path, func(w http.ResponseWriter, _ *http.Request) {
			h := w.Header()
			h.Set("Content-Type", kind)
			h.Set("Cache-Control", "no-cache")
			h.Set("X-Content-Type-Options", "nosniff")
			_, _ = w.Write(content) // a phone that went away needs no answer
		})
	}
	send("/{$}", "text/html; charset=utf-8", page)
	send("/worker.js", "text/javascript; charset=utf-8", worker)
	return mux, nil
}

// serve serves the page until it is interrupted.
func serve(e *cli.Env, page []byte, address, cert, key string) error {
	h, err := handler(page)
	if err != nil {
		return err
	}
	l, err := net.Listen("tcp", address)
	if err != nil {
		return cli.For("serve", err)
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	server := &http.Server{Handler: h, ReadHeaderTimeout: 10 * time.Second}
	go func() {
		<-ctx.Done()
		late, cancel := context.WithTimeout(context.Background(), time.Second)
		defer cancel()
		_ = server.Shutdown(late) // what still hangs is cut off
	}()
	if cert != "" {
		fmt.Fprintf(e.Err, "https at %s, until interrupted. A phone that trusts the certificate keeps the page.\n", l.Addr())
		err = server.ServeTLS(l, cert, key)
	} else {
		fmt.Fprintf(e.Err, "http at %s, until interrupted. Plain http only shows the page: no phone keeps it.\n", l.Addr())
		err = server.Serve(l)
	}
	if errors.Is(err, http.ErrServerClosed) {
		return nil
	}
	return cli.For("serve", err)
}
