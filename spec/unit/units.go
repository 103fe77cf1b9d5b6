package unit

// A kind is what the package knows of one dimension.
type kind struct {
	si    string
	units []measure
}

// u is a unit on a scale that starts at nought.
func u(symbol, factor string, aliases ...string) measure {
	return measure{symbol: symbol, factor: exact(factor), aliases: aliases}
}

// from is a unit whose nought lies at zero SI units.
func from(zero string, m measure) measure {
	m.zero = exact(zero)
	return m
}

// Exact definitions, after NIST SP 811 (2008) appendix B. π is given to more
// digits than a float64 can hold, so that the one rounding is the last.
const (
	inch  = " 0.0254 "
	foot  = " 0.3048 "
	pound = " 0.45359237 "
	gn    = " 9.80665 " // standard acceleration of free fall
	lbf   = pound + gn
	pi    = " 3.14159265358979323846264338327950288419716939937510 "
	usGal = " 0.003785411784 " // 231 in³
	ukGal = " 0.00454609 "
	hp    = " 550 " + foot + lbf // 550 ft lbf/s
	perIn = " /0.0254 "
	perFt = " /0.3048 "
	hour  = " 3600 "
)

// order is the order in which a unit's dimension is looked up when none is
// given: a symbol shared by two of them ("K", "g") belongs to the first.
var order = []Dimension{
	Length, Area, Volume, SecondMoment, Mass, MassPerLength, Force, Pressure, AbsolutePressure,
	Torque, Energy, SpecificEnergy, SpecificHeat, Power, Temperature, TemperatureDifference,
	Angle, RotationalSpeed, Speed, Acceleration, VolumeFlow, MassFlow, Density,
	KinematicViscosity, DynamicViscosity, Current, Voltage, Resistance, ResistancePerLength,
	Charge, Duration, Age, Ratio, Stiffness, FuelConsumption, Count,
}

var kinds = map[Dimension]kind{
	Length: {"m", []measure{
		u("mm", "/1000"), u("cm", "/100"), u("m", "1"), u("in", inch, "inch", "inches", `"`),
		u("ft", foot), u("thou", inch+"/1000"), u("km", "1000"),
	}},
	Area: {"m2", []measure{
		u("mm2", "/1000000"), u("cm2", "/10000"), u("m2", "1"), u("in2", inch+inch, "sq in"), u("ft2", foot+foot, "sq ft"),
	}},
	Volume: {"m3", []measure{
		u("L", "/1000", "l", "litre", "litres"), u("mL", "/1000000", "ml"), u("cm3", "/1000000", "cc", "ccm"), u("m3", "1"),
		u("in3", inch+inch+inch, "cu in"), u("US gal", usGal, "gal(US)", "gal (US)"), u("imp gal", ukGal, "gal(imp)", "gal (imp)", "UK gal"),
		u("US qt", usGal+"/4"), u("imp qt", ukGal+"/4"), u("US pt", usGal+"/8"), u("imp pt", ukGal+"/8"),
		u("US fl oz", usGal+"/128"), u("imp fl oz", ukGal+"/160"),
	}},
	SecondMoment: {"m4", []measure{u("cm4", "/100000000"), u("mm4", "/1000000000000"), u("m4", "1"), u("in4", inch+inch+inch+inch)}},
	Mass: {"kg", []measure{
		u("kg", "1"), u("g", "/1000"), u("t", "1000", "tonne", "tonnes"), u("lb", pound, "lbs", "lbm"), u("oz", pound+"/16"),
		u("short ton", pound+"2000", "short tons"), u("long ton", pound+"2240", "long tons"),
	}},
	MassPerLength: {"kg/m", []measure{u("kg/m", "1"), u("g/m", "/1000"), u("lb/ft", pound+perFt)}},
	Force: {"N", []measure{
		u("N", "1"), u("kN", "1000"), u("daN", "10"), u("lbf", lbf), u("kgf", gn, "kp"),
	}},
	Pressure: {"Pa", []measure{
		u("bar", "100000", "bar gauge", "bar g", "barg"), u("kPa", "1000", "kPa gauge"), u("MPa", "1000000", "MPa gauge", "N/mm2"),
		u("psi", lbf+perIn+perIn, "psig", "psi gauge", "lbf/in2"), u("mbar", "100", "mbar gauge"), u("Pa", "1", "N/m2", "Pa gauge"),
		u("ksi", "1000"+lbf+perIn+perIn), u("kgf/cm2", gn+"10000"), u("inHg", "3386.389"), u("inH2O", "249.0889"),
	}},
	AbsolutePressure: {"Pa", []measure{
		u("bar absolute", "100000", "bar abs", "bara"), u("kPa absolute", "1000", "kPa abs"), u("psi absolute", lbf+perIn+perIn, "psia", "psi abs"),
		u("mbar absolute", "100", "mbar abs", "hPa absolute", "hPa abs"), u("MPa absolute", "1000000", "MPa abs"), u("Pa absolute", "1", "Pa abs"),
	}},
	Torque: {"N m", []measure{
		u("N m", "1", "Nm", "N.m"), u("lbf ft", lbf+foot, "lb ft", "ft lbf", "ft lb", "lbs ft", "ft lbs"),
		u("lbf in", lbf+inch, "lb in", "in lbf", "in lb", "lbs in", "in lbs"), u("kgf m", gn), u("kN m", "1000", "kNm"), u("N mm", "/1000", "Nmm"),
	}},
	Energy: {"J", []measure{
		u("J", "1"), u("kJ", "1000"), u("MJ", "1000000"), u("Wh", hour), u("kWh", "1000"+hour), u("Btu", "1055.05585262"),
	}},
	SpecificEnergy: {"J/kg", []measure{
		u("MJ/kg", "1000000"), u("kJ/kg", "1000"), u("J/kg", "1"), u("Btu/lb", "2326"),
	}},
	SpecificHeat: {"J/(kg K)", []measure{u("kJ/(kg K)", "1000", "kJ/kg K"), u("J/(kg K)", "1", "J/kg K")}},
	Power: {"W", []measure{
		u("kW", "1000"), u("W", "1"), u("MW", "1000000"), u("PS", "75"+gn, "hp metric", "metric hp", "cv", "ch"),
		u("hp imperial", hp, "imperial hp", "hp (imperial)", "hp(I)"), u("Btu/h", "1055.05585262 /3600"),
	}},
	Temperature: {"K", []measure{
		from("273.15", u("°C", "1", "C", "degC")), from("459.67 5 /9", u("°F", "5 /9", "F", "degF")), u("K", "1"),
	}},
	TemperatureDifference: {"K", []measure{u("K", "1"), u("°C", "1", "C", "degC"), u("°F", "5 /9", "F", "degF")}},
	Angle:                 {"rad", []measure{u("deg", pi+"/180", "degree", "degrees"), u("rad", "1")}},
	RotationalSpeed:       {"rad/s", []measure{u("rpm", pi+"/30", "1/min", "r/min", "rev/min"), u("rad/s", "1")}},
	Speed: {"m/s", []measure{
		u("m/s", "1"), u("km/h", "1000 /3600", "kph"), u("mph", foot+"5280 /3600", "mile/h"), u("ft/s", foot), u("mm/s", "/1000"), u("m/min", "/60"),
	}},
	Acceleration: {"m/s2", []measure{u("m/s2", "1"), u("g", gn)}},
	VolumeFlow: {"m3/s", []measure{
		u("L/min", "/60000", "l/min"), u("L/h", "/3600000", "l/h"), u("mL/min", "/60000000", "ml/min", "cc/min", "cm3/min"), u("L/s", "/1000", "l/s"),
		u("m3/h", "/3600"), u("m3/s", "1"), u("US gal/min", usGal+"/60", "gpm(US)", "gpm (US)"), u("imp gal/min", ukGal+"/60", "gpm(imp)", "gpm (imp)"),
		u("US gal/h", usGal+"/3600", "gph(US)", "gph (US)"), u("imp gal/h", ukGal+"/3600", "gph(imp)", "gph (imp)"), u("ft3/min", foot+foot+foot+"/60", "cfm"),
	}},
	MassFlow: {"kg/s", []measure{
		u("kg/h", "/3600"), u("g/s", "/1000"), u("kg/min", "/60"), u("g/min", "/60000"), u("kg/s", "1"), u("lb/h", pound+"/3600", "lbs/h", "lb/hr", "lbs/hr"), u("lb/min", pound+"/60", "lbs/min"),
	}},
	Density: {"kg/m3", []measure{
		u("kg/m3", "1"), u("kg/L", "1000", "kg/l"), u("g/cm3", "1000", "g/cc", "g/mL", "g/ml"),
		u("lb/ft3", pound+perFt+perFt+perFt), u("lb/US gal", pound+"/0.003785411784"), u("lb/imp gal", pound+"/0.00454609"),
	}},
	KinematicViscosity: {"m2/s", []measure{u("mm2/s", "/1000000"), u("cSt", "/1000000"), u("m2/s", "1")}},
	DynamicViscosity:   {"Pa s", []measure{u("mPa s", "/1000", "mPas"), u("cP", "/1000"), u("Pa s", "1", "Pas")}},
	Current:            {"A", []measure{u("A", "1"), u("mA", "/1000")}},
	Voltage:            {"V", []measure{u("V", "1"), u("mV", "/1000"), u("kV", "1000")}},
	Resistance:         {"ohm", []measure{u("ohm", "1", "ohms"), u("mohm", "/1000"), u("kohm", "1000")}},
	ResistancePerLength: {"ohm/m", []measure{
		u("mohm/m", "/1000"), u("ohm/m", "1"), u("ohm/km", "/1000"), u("ohm/1000 ft", "/1000"+perFt),
	}},
	Charge:   {"C", []measure{u("Ah", hour, "A h"), u("mAh", hour+"/1000"), u("A s", "1", "As")}},
	Duration: {"s", []measure{u("h", hour, "hour", "hours", "hr"), u("min", "60"), u("s", "1"), u("ms", "/1000"), u("d", "86400", "day", "days")}},
	Age:      {"month", []measure{u("years", "12", "year", "y"), u("months", "1", "month")}},
	Ratio:    {"", []measure{u("", "1"), u("%", "/100"), u(":1", "1")}},
	Stiffness: {"N/m", []measure{
		u("N/mm", "1000"), u("N/m", "1"), u("kN/m", "1000"), u("lbf/in", lbf+perIn, "lb/in"), u("kgf/mm", gn+"1000"),
	}},
	FuelConsumption: {"kg/J", []measure{
		u("g/kWh", "/1000 /3600000", "g/(kW h)", "g/kW h"), u("lb/(hp h)", pound+"/3600 /550 /0.3048 /0.45359237 /9.80665", "lb/hp h", "lb/hp/h"),
	}},
	Count: {"1", []measure{u("runs", "1", "run"), u("events", "1", "event"), u("cycles", "1", "cycle", "heat cycles")}},
}
