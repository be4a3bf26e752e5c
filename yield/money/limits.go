package money

const maxRuleBrix = 30.0

const minRuleBrix = 0.5

const minSyrupBrix = 60.0 // what may be called syrup
