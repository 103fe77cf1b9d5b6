// Makes the sheets of the demo, and lists what has to be seen on each: what the
// program's other commands say of the same cars.
// Call: node cases.mjs FITUP DIR, in the top folder of the repository.
import { execFileSync } from "node:child_process";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import path from "node:path";

const [fitup, folder] = process.argv.slice(2);
const on = "2026-11-25";

// run returns what a call prints; exit codes 0 and 1 are reports.
function run(...args) {
  try {
    return execFileSync(fitup, [...args, "--on", on], { encoding: "utf8", maxBuffer: 1 << 28 });
  } catch (failed) {
    if (failed.status === 1) return failed.stdout;
    throw failed;
  }
}

const cars = readdirSync("cars").filter((name) => /^[^.].*\.toml$/.test(name)).map((name) => path.join("cars", name));
const driven = (car) => /^driveline\s*=\s*"(?!none)/m.test(readFileSync(car, "utf8"));

const cases = [];
for (const car of cars) {
  const name = path.basename(car, ".toml");
  const page = path.join(folder, `${name}.html`);
  run("sheet", car, "-o", page);
  const report = JSON.parse(run("check", car, "--format", "json"));
  cases.push({ name, page, texts: report.findings.map((f) => f.message) });
}
for (const giver of cars.filter(driven)) {
  for (const into of cars.filter((car) => car !== giver)) {
    const name = `${path.basename(giver, ".toml")}-into-${path.basename(into, ".toml")}`;
    const page = path.join(folder, `${name}.html`);
    const move = ["--from", giver, "--into", into];
    run("sheet", ...move, "-o", page);
    const plan = JSON.parse(run("swap", ...move, "--format", "json"));
    const steps = (plan.order ?? []).flatMap((way) => way.steps);
    cases.push({
      name,
      page,
      texts: [
        ...plan.appears.map((f) => f.message),
        ...steps.flatMap((step) => [step.do, ...step.notes, ...step.tools, step.torque ?? ""]),
        ...plan.lists.flatMap((list) => list.lines),
      ],
    });
  }
}
if (cases.length === 0) throw new Error("no car in the demo");
writeFileSync(path.join(folder, "cases.json"), JSON.stringify(cases));
