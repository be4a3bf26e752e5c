package main

import (
	"runtime/debug"
	"testing"
)

func TestModuleVersion(t *testing.T) {
	for _, c := range []struct {
		m             debug.Module
		version, date string
	}{
		{debug.Module{Version: "v0.0.0", Replace: &debug.Module{Path: "../..", Version: "(devel)"}}, "taken from a folder", "A folder carries no date: note the day on which it was copied."},
		{debug.Module{Version: "v0.0.0-20260309120000-0123456789ab"}, "v0.0.0-20260309120000-0123456789ab", "Of 2026-03-09."},
		{debug.Module{Version: "v1.2.4-0.20260309235959-0123456789ab"}, "v1.2.4-0.20260309235959-0123456789ab", "Of 2026-03-09."},
		{debug.Module{Version: "v1.2.3"}, "v1.2.3", "The change log of the library tells its date."},
		{debug.Module{Version: "v1.2.3", Replace: &debug.Module{Path: "example.org/fork", Version: "v1.3.0"}}, "v1.3.0", "The change log of the library tells its date."},
	} {
		if version, date := moduleVersion(&c.m); version != c.version || date != c.date {
			t.Errorf("%+v: %q, %q", c.m, version, date)
		}
	}
}
