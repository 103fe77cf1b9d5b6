package main

import (
	"fmt"
	"os"
	"path/filepath"

	"github.com/cli/browser"
	"github.com/spf13/cobra"

	"fitup/cmd/fitup/report/sheet"
	"fitup/policies/config"
	"fitup/spec/nearest"
)

type sheetOptions struct {
	from, driveline, into   string
	on, by, failOn, config  string
	format, drawing, output string
	rules                   []string
	open, all               bool
}

// Formats of a sheet.
const (
	sheetPage     = "html"
	sheetDrawings = "svg"
)

func newSheet() *cobra.Command {
	var o sheetOptions
	cmd := &cobra.Command{
		Use:   "sheet (CAR | --into CAR (--from CAR | --driveline FILE))",
		Short: "Write the bench sheet, with drawings, to print or for a phone",
		Long: `Sheet writes one HTML file to pin up beside the car. It needs no network and no
script, and prints on A4 and Letter.

Of a CAR it is about taking its driveline out and putting it back; with --into it
is about a swap, as "fitup swap" plans it. On it are: findings with their
cautions; how the car stands and how the driveline hangs; what to make or buy;
where to part it; the order of work, to tick off and to sign; tools, fluids,
torques and checks; the circuits; what runs out; what to measure; what the sheet
was made from; and all workings with their sources.

--format svg writes the drawings as files of their own: all into the folder that
-o names, or the one that --drawing names.

Exit codes are those of check, or of swap with --into; the sheet is written all
the same. See "fitup help exit-codes".`,
		Example: `  fitup sheet cars/blue.toml -o blue.html
  fitup sheet cars/blue.toml --open
  fitup sheet --from cars/blue.toml --into cars/green.toml -o swap.html
  fitup sheet cars/blue.toml --format svg -o drawings
  fitup sheet cars/blue.toml --format svg --drawing plan > plan.svg`,
		Args:              arguments(0, 1),
		ValidArgsFunction: specFiles,
		RunE:              func(cmd *cobra.Command, args []string) error { return runSheet(cmd, o, args) },
	}
	flags := cmd.Flags()
	flags.StringVar(&o.from, "from", "", "`CAR` that gives its driveline")
	flags.StringVar(&o.driveline, "driveline", "", "`FILE` of a driveline that is on the bench")
	flags.StringVar(&o.into, "into", "", "`CAR` that receives it")
	flags.StringVarP(&o.output, "output", "o", "", "`FILE` to write, or folder for drawings (default standard output)")
	flags.StringVar(&o.format, "format", sheetPage, "`FORMAT` to write: html, or svg for the drawings")
	flags.StringVar(&o.drawing, "drawing", "", "with --format svg: only the drawing of this `NAME`")
	flags.BoolVar(&o.all, "all", false, "print all workings, not only those that the sheet rests on")
	flags.BoolVar(&o.open, "open", false, "show the page in a browser")
	flags.StringVar(&o.on, "on", "", "judge as of a `DAY`, such as 2027-04-01 (default today)")
	flags.StringVar(&o.by, "by", "", "last `DAY` to look ahead to for what runs out (default a year on)")
	flags.StringVar(&o.failOn, "fail-on", "", "`LEVEL` from which findings make the exit code 1:\ndanger, fault, advice or never (default fault)")
	flags.StringArrayVar(&o.rules, "rules", nil, "`DIR` with rules of your own; may be given several times")
	flags.StringVar(&o.config, "config", "", "configuration `FILE`, or none\n(default the nearest .fitup.toml upward)")
	complete(cmd, "format", sheetPage, sheetDrawings)
	completeFiles(cmd, "from", "into", "driveline", "config")
	completeFolders(cmd, "rules")
	complete(cmd, "fail-on", config.FailLevels...)
	return cmd
}

func runSheet(cmd *cobra.Command, o sheetOptions, args []string) error {
	if err := o.check(args); err != nil {
		return err
	}
	on, by, err := dueDays(o.on, o.by)
	if err != nil {
		return err
	}
	choice, err := choiceOf(checkOptions{failOn: o.failOn, rules: o.rules})
	if err != nil {
		return err
	}
	shown := showProgress(cmd, "judging")
	defer shown.end()
	made := making{judging{cmd.Context(), choice, on, shown.step}, by}
	var s *sheet.Sheet
	if o.into == "" {
		s, err = made.ofCar(args[0], o.config)
	} else {
		s, err = made.ofSwap(swapOptions{from: o.from, driveline: o.driveline, into: o.into, config: o.config})
	}
	if err != nil {
		return err
	}
	s.All = o.all
	shown.end()
	if o.format == sheetDrawings {
		err = o.writeDrawings(cmd, s)
	} else {
		err = o.writePage(cmd, s)
	}
	if err != nil {
		return err
	}
	fail := config.FailLevel(s.Check.FailOn)
	if o.into != "" {
		return swapped(s.Work, fail)
	}
	return judged(s.Check, fail)
}

// check looks at what flags and arguments say together.
func (o sheetOptions) check(args []string) error {
	const form = "the form is: fitup sheet CAR, or --from CAR --into CAR, or --driveline FILE --into CAR"
	swap := o.into != "" && (o.from == "") != (o.driveline == "")
	car := o.into+o.from+o.driveline == "" && len(args) == 1
	switch {
	case !car && (!swap || len(args) > 0):
		return callErrorf("%s", form)
	case o.format != sheetPage && o.format != sheetDrawings:
		return callErrorf("--format %s: no such format; write %s or %s", o.format, sheetPage, sheetDrawings)
	case o.drawing != "" && o.format != sheetDrawings:
		return callErrorf("--drawing %s goes with --format %s; the page has all drawings", o.drawing, sheetDrawings)
	case o.open && o.format != sheetPage:
		return callErrorf("--open shows the page; leave out --format %s", sheetDrawings)
	case o.format == sheetDrawings && o.drawing == "" && o.output == "":
		return callErrorf("there are several drawings; name a folder for them with -o DIR, or one of them with --drawing NAME")
	}
	return nil
}

// writePage writes the page, and shows it if that is wanted.
func (o sheetOptions) writePage(cmd *cobra.Command, s *sheet.Sheet) error {
	page, err := sheet.HTML(s)
	if err != nil {
		return err
	}
	file := o.output
	if file == "" && !o.open && isTerminal(cmd.OutOrStdout()) {
		return callErrorf("a page is nothing to look at in a terminal; name a file with -o FILE, or give --open")
	}
	if o.open && file == "" {
		folder, err := os.MkdirTemp("", "fitup-")
		if err != nil {
			return callErrorf("%w; name a file with -o FILE", err)
		}
		file = filepath.Join(folder, "sheet.html")
	}
	if err := o.put(cmd, file, page); err != nil || !o.open {
		return err
	}
	fmt.Fprintf(cmd.ErrOrStderr(), "fitup: %s\n", file)
	browser.Stdout, browser.Stderr = cmd.ErrOrStderr(), cmd.ErrOrStderr()
	if err := browser.OpenFile(file); err != nil {
		return callErrorf("no browser could be opened (%w); open %s yourself", err, file)
	}
	return nil
}

// writeDrawings writes one drawing, or all of them into a folder.
func (o sheetOptions) writeDrawings(cmd *cobra.Command, s *sheet.Sheet) error {
	var names []string
	for _, d := range s.Drawings() {
		names = append(names, d.Name)
		if o.drawing != "" && d.Name != o.drawing {
			continue
		}
		file, err := sheet.SVG(d)
		if err != nil {
			return err
		}
		if o.drawing != "" {
			return o.put(cmd, o.output, file)
		}
		if err := os.MkdirAll(o.output, 0o755); err != nil {
			return callErrorf("%w; give -o a folder that can be made", err)
		}
		if err := o.put(cmd, filepath.Join(o.output, d.Name+".svg"), file); err != nil {
			return err
		}
	}
	switch {
	case len(names) == 0:
		return callErrorf("there is nothing to draw: no support, and no line that joins two parts, is written")
	case o.drawing == "":
		return nil
	}
	if near := nearest.To(o.drawing, names); near != "" {
		return callErrorf("--drawing %s: no drawing is called so; did you mean %s?", o.drawing, near)
	}
	return callErrorf("--drawing %s: no drawing is called so; write %s", o.drawing, words(names))
}

// put writes a text to a file, or to standard output.
func (o sheetOptions) put(cmd *cobra.Command, file string, text []byte) error {
	if file == "" {
		_, err := cmd.OutOrStdout().Write(text)
		return err
	}
	if err := writeFile(file, text); err != nil {
		return callErrorf("%w; give -o a file that can be written", err)
	}
	return nil
}
