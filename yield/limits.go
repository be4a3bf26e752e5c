package yield

const maxVolume = 1e6 // m3
