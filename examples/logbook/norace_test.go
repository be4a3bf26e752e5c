//go:build !race

package main

const million = 1_000_000
