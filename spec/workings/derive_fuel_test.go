package workings

import "testing"

// TestFuelWithoutRegulator: what holds the pressure where nothing is fitted to do so.
// The expected figures are those that are written down: nothing is computed from them.
func TestFuelWithoutRegulator(t *testing.T) {
	none := "[fuel]\nregulator = \"none\"\n"
	electric := "[fuel.pump]\nflow = [\"4 L/min at 0.5 bar\", \"2 L/min at 5 bar\"]\nrelief = \"0.5 bar\"\n"
	runAll(t, []derivation{
		{
			name: "carburettors behind an electric pump: its own valve does",
			specs: specs{
				car:       none + electric,
				driveline: "[engine]\ninjectors = \"none\"\n[tune]\nbase-fuel-pressure = \"0.25 bar\"\n",
			},
			want: map[string]string{"fuel rail_pressure": "0.5 bar", "fuel pump_flow": "4 L/min"},
		},
		{
			name: "carburettors behind the pump that the engine drives",
			specs: specs{
				car:       none + "pump = \"none\"\n",
				driveline: "[engine]\ninjectors = \"none\"\n[pumps.fuel]\nflow = \"1.5 L/min at 6500 rpm\"\nrelief = \"0.3 bar\"\n",
			},
			want: map[string]string{"fuel rail_pressure": "0.3 bar", "fuel pump_flow": "1.5 L/min"},
		},
		{
			name: "injectors behind a pump that the engine computer slows down: the map and the boost",
			specs: specs{
				car:       none + electric,
				driveline: "[engine]\ninduction = \"turbocharged\"\nboost = \"1.5 bar\"\ninjectors = \"4 x 500 mL/min at 3.5 bar\"\n[tune]\nbase-fuel-pressure = \"3.5 bar\"\n",
			},
			want: map[string]string{
				"fuel rail_pressure": "5 bar", "fuel injector_pressure": "3.5 bar",
				"fuel pump_flow": "2 L/min", "fuel injector_flow": "500 mL/min",
			},
		},
	})
}

// TestFeedLoss: 1 L/min of petrol of 745 kg/m³ and 0.55 mm²/s goes up by 1 m through
// 1 m of hose of 5 mm. By hand: v = 0.8488 m/s, Re = 7717, f = 0.0331 by Colebrook, so
// 1778 Pa; entry and exit 1.5 times 268 Pa; the climb 7306 Pa. The pump loses 1 L/min a
// bar, and so 0.0949 L/min.
func TestFeedLoss(t *testing.T) {
	fed := func(to string) specs {
		return specs{
			car: "[fuel]\ncarries = \"fuel\"\n[fuel.cell]\nfilled-with = \"petrol\"\n[fuel.regulator]\nbase = \"3 bar\"\nfollows-manifold = false\n" +
				"[fuel.pump]\nflow = [\"1 L/min at 3 bar\", \"0 L/min at 4 bar\"]\nports.out = { at = \"0, 0, 0 mm\" }\n" +
				"[parts.rail]\nports.in = { at = \"0, 0, 1000 mm\", takes = \"fuel\" }\n" +
				"[lines.feed]\nhose = \"1 m of five\"\nfrom = { port = \"fuel.pump.out\" }\n" + to,
			shop: "[hoses.five]\nbore = \"5 mm\"\n",
		}
	}
	runAll(t, []derivation{
		{
			name: "a feed that climbs", specs: fed("to = { port = \"parts.rail.in\" }\n"), tolerance: 0.005,
			want: map[string]string{"fuel feed_loss": "9486 Pa", "fuel fed_flow": "0.9051 L/min"},
		},
		{
			name: "a line of nobody knows where from", specs: fed("to = { port = \"parts.rail.in\" }\n[lines.other]\nhose = \"1 m of five\"\nto = { port = \"parts.rail.in\" }\n"),
			want: map[string]string{"fuel feed_loss": "missing lines.other.from"},
		},
	})
}
