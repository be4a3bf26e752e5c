package main

// cautions of the finish, as those of the other programs. Sources: US CPSC;
// University of Vermont; Cornell maple program; CFIA; regulation M-35.1 r. 18.1;
// University of Maine Extension; common practice.
var cautions = []string{
	"Syrup near 219 F and candy up to 260 F burn through the skin at once and stick: long sleeves and gloves, no children or pets near, a cup filled away from the body.",
	"The end comes in minutes: never leave the pot. It foams over, runs low, scorches and burns: keep defoamer at hand, and take it off rather than leave it.",
	"Hang the scale, or weigh with the fire out and two pairs of hands.",
	"Boil outdoors, or under a vent with a flue and a carbon monoxide alarm; never on a camp stove in a closed room.",
	"Milk, cream and butter against foam or in a confection are allergens, and so are nuts: declare them.",
	"Syrup thinner than its mark ferments and grows mold; moldy syrup or cream is thrown away, not skimmed.",
	"Pans, pots, cups and thermometers free of lead: no lead solder, old galvanized ware, brass or bronze. A thermometer with mercury stays out of food.",
}
