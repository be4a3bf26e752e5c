// Package density tells what a sugar solution weighs and what an instrument
// floating in it reads.
package density
