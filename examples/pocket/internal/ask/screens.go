package ask

// screens is the table of questions, in the order of the page.
var screens = []Screen{syrupScreen, tonightScreen, bookScreen, mendScreen, tomorrowScreen, treeScreen, cardScreen}
