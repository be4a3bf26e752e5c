package sugar

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/units"
)

// What a balance by volume may be asked for, in Brix.
const balanceLow = 0.1

// VolumeBalance returns what comes of reckoning a membrane by volume, as is
// common: of 100 gal of 2 Brix, 25 gal of 8. A gallon of 8 Brix holds more than
// four times the sugar of one of 2, since it is denser, so that the concentrate
// that has come down to 25 gal is thinner than 8: that is the Brix of the miss.
// Its Syrup is what the syrup of 25 gal of 8 Brix would be too much.
//
// Arguments: the volume of the feed, its strength, the concentrate and the syrup
// meant; volumes at 20 C. [Membrane.Concentrate] has the exact balance.
//
// Range: 0 to 1e6 m3; feed from 0.1 Brix, concentrate from there, and syrup from
// there to 85 Brix. Uncertainty: 0.02 percent from the densities.
//
// Method: the sugar is the same, rho(B) B before and after. Check value: 100 US
// gal of 2 Brix at 25 gal hold 7.82 Brix, not 8 (computed); four times the sugar
// of 2 Brix makes 1 gal of 0.2442 (computed).
func VolumeBalance(volume units.Volume, feed, concentrate, syrup units.Brix) (units.Miss, error) {
	const fn = "sugar.VolumeBalance"
	const hint = "the feed is the thinnest of the three, and the syrup the strongest"
	if err := shelf.Amount(fn, "volume", volume); err != nil {
		return limit.NoMiss(), err
	}
	if err := limit.In(fn, "syrup", float64(syrup), balanceLow, shelf.MaxBrix, "Brix", hint); err != nil {
		return limit.NoMiss(), err
	}
	if err := limit.In(fn, "concentrate", float64(concentrate), balanceLow, float64(syrup), "Brix", hint); err != nil {
		return limit.NoMiss(), err
	}
	if err := limit.In(fn, "feed", float64(feed), balanceLow, float64(concentrate), "Brix", hint); err != nil {
		return limit.NoMiss(), err
	}
	in, err := shelf.Sugar(fn, feed)
	if err != nil {
		return limit.NoMiss(), err
	}
	want, err := shelf.Sugar(fn, concentrate)
	if err != nil {
		return limit.NoMiss(), err
	}
	out, err := shelf.Sugar(fn, syrup)
	if err != nil {
		return limit.NoMiss(), err
	}
	left := feed / concentrate // volumes of concentrate, by the rule
	made, err := shelf.Strength(fn, "feed", in/float64(left))
	if err != nil {
		return limit.NoMiss(), err
	}
	return units.Miss{
		Brix:  made - concentrate,
		Syrup: volume * units.Volume((float64(left)*want-in)/out),
	}, nil
}
