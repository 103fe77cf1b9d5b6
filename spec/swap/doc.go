// Package swap works out how a driveline goes from one car to another: which
// cars and drivelines belong together (compose.go), what fits interface by
// interface (fit.go, meet.go, reach.go, room.go, adaptor.go), where to part the
// one from the other (cut.go, search.go, and network.go for what specs say), and
// what to do in what order (plan.go, order.go). compare.go holds two cars side by
// side.
//
// It composes, cuts and orders. It judges nothing: rules and what they find of
// the compositions are joined to it by the command.
package swap
