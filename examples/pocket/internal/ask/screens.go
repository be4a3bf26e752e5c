package ask

// screens is the table of questions.
var screens = []Screen{
	syrupScreen,
}
