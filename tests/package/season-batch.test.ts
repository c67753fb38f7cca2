import { execFileSync, spawn, spawnSync } from "node:child_process";
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { createContext, runInContext } from "node:vm";
import { buildSync } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { installInto, root } from "./pack.mjs";

// As its user runs it: from the packed tarball, on files of their own.
const example = join(root, "examples/season-batch");
const folder = mkdtempSync(join(tmpdir(), "season-"));
const sample = join(example, "plots.csv");

/** The sample, worked out. */
let result: Season;
let doses: Row[];

beforeAll(() => {
  installInto(example);
  result = season("sample", sample);
  doses = rowsOf(result.doses);
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

type Row = Readonly<Record<string, string>>;

interface Season {
  readonly status: number | null;
  readonly said: string;
  readonly doses: string;
  readonly refused: string;
}

function optionsFor(name: string, input: string): string[] {
  mkdirSync(join(folder, name), { recursive: true });
  const [doses, refused] = [join(folder, name, "doses.csv"), join(folder, name, "refused.csv")];
  return ["main.mjs", input, "--doses", doses, "--refused", refused];
}

const contentOf = (path: string): string =>
  statSync(path, { throwIfNoEntry: false })?.isFile() ? readFileSync(path, "utf8") : "";

// One worker is enough for a few rows, and started sooner.
function season(name: string, input: string, ...more: string[]): Season {
  const options = [...optionsFor(name, input), "--workers", "1", ...more];
  const { status, stderr } = spawnSync(process.execPath, options, { cwd: example, encoding: "utf8" });
  const doses = contentOf(join(folder, name, "doses.csv"));
  const refused = contentOf(join(folder, name, "refused.csv"));
  return { status, said: stderr, doses, refused };
}

function file(name: string, content: string | Buffer): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

function generated(rows: number): string {
  const path = join(folder, `generated-${rows}.csv`);
  execFileSync(process.execPath, ["generate.mjs", String(rows), path, "--faulty", "0.05"], { cwd: example });
  return path;
}

/** Cells by RFC 4180 (Common Format and MIME Type for CSV Files, IETF, 2005), read here without a library. */
function cellsOf(text: string): string[][] {
  const rows: string[][] = [];
  const CELL = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|\n|$)/y;
  let row: string[] = [];
  while (CELL.lastIndex < text.length) {
    const at = CELL.lastIndex;
    const [, quoted, plain = "", end] =
      CELL.exec(text) ?? expect.fail(`no CSV at ${text.slice(at, at + 60)}`);
    row.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === ",") continue;
    rows.push(row);
    row = [];
  }
  return rows;
}

function rowsOf(text: string): Row[] {
  const [titles = [], ...rows] = cellsOf(text);
  return rows.map((cells) => Object.fromEntries(titles.map((title, i) => [title, cells[i] ?? ""])));
}

/** `line, column: what` for every fault of the refused rows. */
function faultsOf(refused: string): string[] {
  return rowsOf(refused).flatMap((row) =>
    (row.refused_for ?? "").split("\n").map((fault) => `${row.refused_line} ${fault}`),
  );
}

describe("the sample's doses", () => {
  it("come with a summary", () => {
    expect(result.status).toBe(0);
    expect(result.said).toContain("14 doses");
    expect(result.said).toContain("8 rows to fix");
  });

  // Worked by hand. Acre 43,560 ft2, gallon 128 fl oz, pint 16 fl oz, tablespoon 1/2 fl oz: Handbook 44, Appendix C (NIST,
  // 2024). Headland: 64 fl oz = 1/2 gal on 4 ft x 272.25 ft = 1,089 ft2 = 1/40 ac is 20 gal/ac; 121 ft x 90 ft = 1/4 ac takes
  // 5 gal and 10 % to spare, 5.5 gal: two loads of 2.75 gal in a 4 gal tank. 2 pt/ac = 32 fl oz/ac is 1.6 fl oz in a gallon.
  it("are those of a plot worked by hand", () => {
    expect(doses.find(({ plot }) => plot === "Headland")).toEqual({
      line: "7",
      farm: "Willow Bend",
      plot: "Headland",
      product: "Product A",
      treated_area: "10890",
      treated_area_unit: "ft2",
      output_rate: "20",
      output_rate_unit: "gal/ac",
      mix: "5.5",
      mix_unit: "gal",
      loads: "2",
      mix_per_load: "2.75",
      product_in_all: "8.8",
      product_per_load: "4.4",
      product_unit: "fl_oz",
      // 1/2 cup is 4 fl oz; 2 teaspoons, at 6 to the fl oz, make 0.333: 1.5 % under, and nothing within 2 % takes fewer.
      measure_per_load: "1 x 1/2 cup + 2 x teaspoon",
      warnings: "mix-over-tank",
    });
  });

  it("are those of the formulas, for every row that was not refused", () => {
    // What the label's text says, in the unit of the dose per acre; ounces to the pound and the pint as in Handbook 44.
    const PER_ACRE: Record<string, number> = {
      "2 pt/ac": 32,
      "1.5 pt/ac": 24,
      "1 pt/ac": 16,
      "1 1/4 pt/ac": 20,
      "3 pt/ac": 48,
      "8 fl oz/ac": 8,
      "12 oz wt/ac": 12,
      "0.5 lb/ac": 8,
    };
    const inputs = rowsOf(readFileSync(sample, "utf8"));
    for (const dose of doses) {
      const plot = (dose.plot ?? "").replace(/^'/, "");
      const row = inputs.find((one) => one.plot === plot) ?? expect.fail(`no plot ${plot}`);
      const of = (title: string): number => Number(row[title] ?? expect.fail(`no ${title}`));
      const near = (title: string, value: number): void =>
        expect(Math.abs(Number(dose[title]) / value - 1), `${plot}, ${title}: ${value}`).toBeLessThan(1e-10);
      const area =
        row.kind === "rectangle"
          ? of("length (ft)") * of("width (ft)")
          : (of("rows") * of("row_length (ft)") * of("band_width (in)")) / 12;
      const strip = (of("strip_swath (in)") / 12) * of("strip_distance (ft)");
      const rate = of("strip_used (fl_oz)") / 128 / (strip / 43_560);
      const mix =
        ((rate * area) / 43_560) * (1 + of("reserve_percent") / 100) + of("line_volume (fl_oz)") / 128;
      const loads = Math.ceil(mix / of("tank (gal)"));
      const product = ((PER_ACRE[row.rate ?? ""] ?? expect.fail(`${row.rate}`)) * mix) / rate;
      near("treated_area", area);
      near("output_rate", rate);
      near("mix", mix);
      expect(dose.loads, plot).toBe(String(loads));
      near("mix_per_load", mix / loads);
      near("product_in_all", product);
      near("product_per_load", product / loads);
    }
    expect(doses.length).toBe(14);
  });

  it("are measured within five per cent, and never over", () => {
    // In fl oz: Handbook 44, Appendix C; a legal milliliter is 1/29.5735 of it, an ounce of weight 28.3495 g.
    const SIZES: Record<string, number> = {
      "pint measure": 16,
      "1/2 cup": 4,
      "1/4 cup": 2,
      "1/3 cup": 8 / 3,
      cup: 8,
      "quart measure": 32,
      tablespoon: 1 / 2,
      teaspoon: 1 / 6,
      "1/2 teaspoon": 1 / 12,
      "1/4 teaspoon": 1 / 24,
      "1/8 teaspoon": 1 / 48,
    };
    for (const dose of doses) {
      const amounts = (dose.measure_per_load ?? "").split(" + ").map((part) => {
        const [, count, tool = "", mark, unit] =
          /^(\d+) x (.+?)(?: to ([\d.]+) (mL|g))?$/.exec(part) ?? expect.fail(`unread: ${part}`);
        const each = mark ? Number(mark) / (unit === "g" ? 28.3495 : 29.5735) : SIZES[tool];
        return Number(count) * (each ?? expect.fail(`unknown: ${tool}`));
      });
      const part = amounts.reduce((a, b) => a + b) / Number(dose.product_per_load);
      expect(part, `${dose.plot}`).toBeGreaterThan(0.95);
      expect(part, `${dose.plot}`).toBeLessThan(1.00001);
    }
  });

  it("leave faulty rows to a file of their own, by line and column", () => {
    // The lines as an editor numbers them; the third plot's name has a line end in it.
    const wanted = [
      "6 row_length (ft): Enter a number, not text.",
      "10 band_width (in): Bands or beds 66 in wide and 5 ft apart overlap",
      "11 rate: Product A: The rate of 4 pt/ac is over the label maximum of 3 pt/ac",
      "12 tank (gal): Enter a volume, such as 5 gal.",
      "13 rate: 2 lb/ac is a weight, but this product is a liquid.",
      "16 plot.base: Enter a length, such as 5 ft.",
      "16 plot.height: Enter a length, such as 5 ft.",
      '16 length (ft): There is no field "length" here.',
      '16 width (ft): There is no field "width" here.',
      "18 This row has 21 cells and the header has 20. Put quotes",
      "20 row_length (ft): Must be more than 0.",
      "20 strip_distance (ft): Must be more than 0.",
    ];
    const found = faultsOf(result.refused);
    expect(found.map((fault, i) => fault.slice(0, wanted[i]?.length))).toEqual(wanted);
    const told = result.said.match(/^line .*$/gm) ?? [];
    expect(told.map((fault) => fault.replace(/^line (\d+)[,:]/, "$1"))).toEqual(found);
    const lines = readFileSync(sample, "utf8").split(/\r?\n/);
    for (const { refused_line, plot } of rowsOf(result.refused))
      expect(lines[Number(refused_line) - 1]).toContain(plot?.replace(/^'/, ""));
  });

  it("lose no row: each is in one of the two files, in order", () => {
    const lines = (rows: Row[], title: string): number[] => rows.map((row) => Number(row[title]));
    const given = lines(doses, "line");
    const refused = lines(rowsOf(result.refused), "refused_line");
    for (const one of [given, refused]) expect(one).toEqual([...one].sort((a, b) => a - b));
    expect([...given, ...refused].sort((a, b) => a - b)).toEqual([
      2, 3, 4, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 22, 23, 24, 25,
    ]);
  });

  it("go back in when the refused rows are mended in their file", () => {
    const mended = result.refused.replaceAll(",about 90,", ",90,").replace(",66,5,", ",60,5,");
    const again = season("mended", file("mended.csv", mended));
    expect(again.status).toBe(0);
    expect(rowsOf(again.doses).map(({ plot }) => plot)).toEqual(["Squash", "Leeks"]);
    expect(cellsOf(again.refused)[0]).toEqual(cellsOf(result.refused)[0]);
    expect(rowsOf(again.refused).length).toBe(6);
  });
});

const HEADER =
  "plot,kind,length (ft),width (ft),strip_used (fl_oz),strip_swath (in),strip_distance (ft),tank (gal),product,form,rate,tools";
const line = (plot: string, rate = "2 pt/ac"): string =>
  `${plot},rectangle,121,90,64,48,272.25,8,Product A,liquid,${rate},us-spoons`;

describe("what is read", () => {
  it("keeps to the lines of an editor through a byte order mark, mixed line ends, quoted ones and blank lines", () => {
    const text = [
      `\uFEFF"plot"${HEADER.slice(4)}\r\n`,
      `${line('"one\r\nplot, in\r\nthree lines"')}\r\n`,
      `${line("five", "two")}\r\n`,
      "\r\n\n",
      `${line('"eight\nand nine"', "")}\n`,
      `${line('bed 5" wide')}\r\n`,
      line("eleven, and last", "none").replace(", and", " and"),
    ];
    const { status, doses, refused } = season("lines", file("lines.csv", text.join("")), "--batch", "1");
    expect(status).toBe(0);
    expect(rowsOf(doses).map((row) => `${row.line} ${row.plot}`)).toEqual([
      "2 one\r\nplot, in\r\nthree lines",
      '10 bed 5" wide',
    ]);
    expect(rowsOf(refused).map((row) => `${row.refused_line} ${row.plot}`)).toEqual([
      "5 five",
      "8 eight\nand nine",
      "11 eleven and last",
    ]);
  });

  it("may be in other units, named in the header or in the cells", () => {
    // 100 L on 100 m x 5 m = 500 m2 are 2,000 L/ha; 40 m x 25 m = 1/10 ha take 200 L, and 2 L/ha of product 200 mL.
    const text = [
      "plot,kind,length (m),width,strip_used (L),strip_swath (m),strip_distance (m),tank (L),product,form,rate (L/ha),tools",
      "Field 1,rectangle,40,2500 cm,100,5,100,400,Product A,liquid,2,cylinders",
    ];
    const [dose] = rowsOf(season("metric", file("metric.csv", text.join("\n"))).doses);
    const { treated_area, output_rate, output_rate_unit, mix, mix_unit, product_in_all, product_unit } =
      dose ?? {};
    expect(`${treated_area}; ${output_rate} ${output_rate_unit}; ${mix} ${mix_unit}`).toBe(
      "1000; 2000 L/ha; 200 L",
    );
    expect(`${product_in_all} ${product_unit}`).toBe("200 mL");
  });

  const headed = (change: (header: string) => string): string => `${change(HEADER)}\r\n${line("one")}\r\n`;
  const BAD: readonly (readonly [name: string, content: string | Buffer, message: string])[] = [
    ["an empty file", "", " is empty. The first line must name the columns."],
    ["a blank first line", `\r\n${HEADER}\r\n`, 'line 1, column 1: Unknown column ""'],
    ["no header", `${line("one")}\r\n`, 'line 1, column 1: Unknown column "one". Use one of: farm, plot'],
    [
      "a missing column",
      headed((h) => h.replace("tank (gal),", "")),
      "line 1: Missing columns: tank. Add a column for each.",
    ],
    [
      "an unknown column",
      headed((h) => h.replace("tank", "tnk")),
      'line 1, column 8: Unknown column "tnk (gal)"',
    ],
    [
      "a column twice",
      headed((h) => h.replace("width (ft)", "length (m)")),
      "line 1: The column length appears twice. Keep one of them.",
    ],
    [
      "an unknown unit",
      headed((h) => h.replace("tank (gal)", "tank (gl)")),
      "tank needs a unit of volume, such as gal.",
    ],
    [
      "a unit of another kind",
      headed((h) => h.replace("tank (gal)", "tank (ft)")),
      "tank needs a unit of volume, such as gal.",
    ],
    [
      "a unit without use",
      headed((h) => h.replace("form", "form (ft)")),
      "has the wrong unit: form has no unit.",
    ],
    ["semicolons", headed((h) => h.replaceAll(",", ";")), 'line 1, column 1: Unknown column "plot;kind'],
    ["UTF-16", Buffer.from(`\uFEFF${headed((h) => h)}`, "utf16le"), " is in utf16le. Save it as UTF-8."],
    [
      "a quote that is not closed",
      `${headed((h) => h)}"${line("two")}\r\n`,
      "line 3: This row has no end or is over 100,000 characters.",
    ],
  ];

  // In one process, since each would load everything for nothing.
  let refusals: Map<string, string>;
  beforeAll(() => {
    const inputs = BAD.map(([name, content]) => file(`bad ${name}.csv`, content));
    const code = `
      import { runSeason } from "./src/season.mjs";
      for (const input of process.argv.slice(1)) {
        const files = { doses: input + ".doses", refused: input + ".refused" };
        const told = await runSeason({ input, ...files, workers: 1, batch: 1, report() {} }).catch((e) => e);
        console.log(JSON.stringify(told.constructor.name + ": " + told.message));
      }`;
    const args = ["--input-type=module", "-e", code, ...inputs];
    const printed = execFileSync(process.execPath, args, { cwd: example, encoding: "utf8" });
    const messages = printed.trim().split("\n");
    refusals = new Map(BAD.map(([name], i) => [name, JSON.parse(messages[i] ?? '""') as string]));
  });

  it.each(BAD)("is refused for %s", (name, _, message) => {
    expect(refusals.get(name)).toMatch(/^BatchError: /);
    expect(refusals.get(name)).toContain(message);
  });

  it("leaves nothing under a final name where it is refused", () => {
    const { status, said, doses, refused } = season(
      "unclosed",
      file("unclosed.csv", `${HEADER}\n"${line("")}\n`),
    );
    expect([status, doses, refused]).toEqual([1, "", ""]);
    expect(said).toMatch(/^line 2: This row has no end.*closing quote\.\n$/);
  });

  it("stops at a row without an end long before the file is in memory", () => {
    const endless = `${HEADER}\r\n"${line("two")}\r\n`.padEnd(3_000_000, "x\r\n");
    const { status, said } = season("endless", file("endless.csv", endless));
    expect(said).toContain("line 2: This row has no end or is over 100,000 characters");
    expect(status).toBe(1);
  });

  it("tells a cell that is not UTF-8, as an old spreadsheet saves it", () => {
    const text = `${HEADER}\n${line("H\xE1rom T\xF6lgy")}\n${line("Willow Bend")}\n`;
    const { doses, refused } = season("latin", file("latin.csv", Buffer.from(text, "latin1")));
    expect(rowsOf(doses).map(({ plot }) => plot)).toEqual(["Willow Bend"]);
    expect(faultsOf(refused)[0]).toMatch(/^2 plot: "H.rom T.lgy" is not in UTF-8\. Save the file as UTF-8\./);
  });

  it("may have no rows", () => {
    const { status, doses, refused } = season("none", file("none.csv", HEADER));
    expect([status, rowsOf(doses), rowsOf(refused)]).toEqual([0, [], []]);
    expect(cellsOf(refused)[0]).toEqual(["refused_line", "refused_for", ...HEADER.split(",")]);
  });

  it("is told where there is no such file", () => {
    const { status, said } = season("nowhere", join(folder, "nowhere.csv"));
    expect(said).toContain("no such file");
    expect(status).toBe(1);
  });
});

describe("what a spreadsheet would run", () => {
  // What a cell must not begin with: Application Security Verification Standard, requirement 1.2.10 (OWASP), and CWE-1236,
  // Improper Neutralization of Formula Elements in a CSV File (MITRE). The wide signs and line ends: from memory.
  const NAMES = [
    "=1+1",
    "=HYPERLINK(A1)",
    "+1 plot",
    "-1-1",
    "@SUM(A1)",
    "\t=1",
    "\r=1",
    "\n=1",
    "\uFF1D1+1",
    "\uFF20A",
    "\u0000=1",
  ];
  const quoted = (name: string): string => `"${name.replaceAll('"', '""')}"`;

  it("is written as text, in both files", () => {
    const rows = NAMES.flatMap((name) => [line(quoted(name)), line(quoted(name), "0")]);
    rows.push(line("numbers").replace("121,90", "-121,+90"));
    const { doses, refused } = season("formulas", file("formulas.csv", [HEADER, ...rows].join("\r\n")));
    // A job's name is without the white space around it; a refused row is as it was given.
    expect(rowsOf(doses).map(({ plot }) => plot)).toEqual(NAMES.map((name) => `'${name.trim()}`));
    expect(rowsOf(refused).map(({ plot }) => plot)).toEqual([...NAMES.map((name) => `'${name}`), "numbers"]);
    // A number is none, whatever its sign.
    const numbers = rowsOf(refused).at(-1);
    expect([numbers?.["length (ft)"], numbers?.["width (ft)"]]).toEqual(["-121", "+90"]);
    const all = [...cellsOf(doses), ...cellsOf(refused)].flat();
    for (const cell of all.filter((one) => !["-121", "+90"].includes(one)))
      expect(cell).not.toMatch(/^[=+\-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20]/);
  });
});

describe("a long file", () => {
  const rows = 400;
  let input: string;
  let whole: Season;
  beforeAll(() => {
    input = generated(rows);
    whole = season("whole", input, "--workers", "3", "--batch", "37");
  });

  it("keeps its order, whoever of the workers is first", () => {
    const lines = rowsOf(whole.doses).map((row) => `${row.line} ${row.plot}`);
    const refused = rowsOf(whole.refused).map((row) => `${row.refused_line} ${row.plot}`);
    const number = (text: string): number => Number(text.split(" ")[0]);
    for (const text of [...lines, ...refused]) expect(text).toBe(`${number(text)} Plot ${number(text) - 1}`);
    for (const one of [lines, refused]) expect(one).toEqual([...one].sort((a, b) => number(a) - number(b)));
    expect(lines.length + refused.length).toBe(rows);
    expect(refused.length).toBeGreaterThan(rows / 50);
  });

  it("tells its progress", () => {
    expect(whole.said).toMatch(/^\d+\.\d%: [\d,]+ rows, \d+ refused/m);
    const refused = rowsOf(whole.refused).length;
    expect(whole.said).toContain(`doses.csv: ${rows - refused} doses. `);
    expect(whole.said).toContain(`refused.csv: ${refused} rows to fix. `);
    // Faults past the first twenty are not all told.
    expect(whole.said.match(/^line /gm)?.length).toBe(20);
    expect(whole.said).toContain("more errors: see the file of refused rows");
  });

  const partOf = (name: string, which: string): string => join(folder, name, `${which}.csv.part`);
  const checkpointOf = (name: string): string => join(folder, name, "doses.csv.checkpoint.json");

  /** Starts a run and kills it, as a power cut would, once it has got past a count of rows. Gives the rows that were kept. */
  async function killed(name: string, past: number): Promise<number> {
    const options = [...optionsFor(name, input), "--workers", "2", "--batch", "1"];
    const child = spawn(process.execPath, options, { cwd: example, stdio: "ignore" });
    const gone = new Promise((resolve) => child.on("exit", (_, signal) => resolve(signal)));
    const kept = (): number => {
      const text = contentOf(checkpointOf(name));
      return text === "" ? 0 : (JSON.parse(text) as { counts: { rows: number } }).counts.rows;
    };
    while (kept() < past && child.exitCode === null) await setTimeout(2);
    child.kill("SIGKILL");
    expect(await gone, "was killed, and had not come to its end").toBe("SIGKILL");
    return kept();
  }

  it("goes on from where it was killed, again and again, to the same bytes", async () => {
    const kept: number[] = [];
    for (const past of [30, 100]) {
      kept.push(await killed("killed", past));
      // What a write that was cut off leaves behind.
      appendFileSync(partOf("killed", "doses"), '777,Willow Bend,"Plot 77');
      appendFileSync(partOf("killed", "refused"), "888,");
      expect(existsSync(join(folder, "killed", "doses.csv"))).toBe(false);
    }
    const [first = 0, second = 0] = kept;
    expect([first >= 30, second >= 100, second < rows]).toEqual([true, true, true]);
    const { status, said, doses, refused } = season("killed", input, "--batch", "200");
    expect(status).toBe(0);
    expect(said).toMatch(new RegExp(`^\\d+\\.\\d%: ${second} rows`));
    expect(doses).toBe(whole.doses);
    expect(refused).toBe(whole.refused);
    expect(readdirSync(join(folder, "killed")).sort()).toEqual(["doses.csv", "refused.csv"]);
  });

  /** A run that wrote everything and could not give the second file its name, for a folder that is in the way. */
  function almostDone(name: string): void {
    mkdirSync(join(folder, name, "refused.csv"), { recursive: true });
    expect(season(name, sample).status).toBe(1);
    expect(readdirSync(join(folder, name)).sort()).toEqual([
      "doses.csv",
      "doses.csv.checkpoint.json",
      "refused.csv",
      "refused.csv.part",
    ]);
    rmSync(join(folder, name, "refused.csv"), { recursive: true });
  }

  it("finishes what stopped between its last two steps", () => {
    almostDone("late");
    const late = season("late", sample);
    expect([late.status, late.doses, late.refused]).toEqual([0, result.doses, result.refused]);
    expect(readdirSync(join(folder, "late")).sort()).toEqual(["doses.csv", "refused.csv"]);
  });

  it("begins anew only when told so, where the input or a part has changed since", () => {
    almostDone("changed");
    // The same length, in a row that was worked out already.
    const other = file(
      "other.csv",
      readFileSync(sample, "utf8").replace("Peppers,row-bands,10", "Peppers,row-bands,11"),
    );
    const changed = season("changed", other);
    expect([changed.status, changed.refused]).toEqual([1, ""]);
    expect(changed.said).toContain("the input has changed");
    truncateSync(partOf("changed", "refused"), 100);
    const short = season("changed", sample);
    expect(short.status).toBe(1);
    expect(short.said).toContain("changed since it was written");
    const again = season("changed", other, "--restart");
    expect([again.status, rowsOf(again.doses)[0]?.treated_area]).toEqual([0, "2200"]);
    expect(again.refused).toBe(result.refused);
  });

  it("is read no faster than it is worked out and written", () => {
    const code = `
      import fs from "node:fs";
      import { syncBuiltinESMExports } from "node:module";
      const open = fs.createReadStream;
      let last;
      fs.createReadStream = (...args) => (last = open(...args));
      syncBuiltinESMExports();
      const { runSeason } = await import("./src/season.mjs");
      let reports = 0;
      function report({ counts }) {
        if (++reports < 3) return;
        console.log(JSON.stringify({ rows: counts.rows, read: last.bytesRead }));
        process.exit();
      }
      const [input, doses, refused] = process.argv.slice(1);
      await runSeason({ input, doses, refused, workers: 1, batch: 10, report });`;
    const long = generated(20_000);
    const files = [long, join(folder, "ahead.doses"), join(folder, "ahead.refused")];
    const args = ["--input-type=module", "-e", code, ...files];
    const printed = execFileSync(process.execPath, args, { cwd: example, encoding: "utf8" });
    const { rows, read } = JSON.parse(printed) as { rows: number; read: number };
    expect(rows).toBe(30);
    // What streams hold by themselves is a few pieces of 64 kB.
    expect(read).toBeLessThan(statSync(long).size / 5);
  });

  it("takes no more memory when it is four times as long", () => {
    // Rows of 20 kB, so that a file that was held, or read ahead of the workers, would show.
    const long = (count: number): string => {
      const rows = Array.from(
        { length: count },
        (_, i) => `${"farm ".repeat(4000)},${line(`Plot ${i}`)}\r\n`,
      );
      return file(`long-${count}.csv`, `farm,${HEADER}\r\n${rows.join("")}`);
    };
    // New objects get little room, so that what is seen is what is held and not what waits to be collected.
    const env = { ...process.env, NODE_OPTIONS: "--max-semi-space-size=2" };
    const peak = (input: string, batch: number): number => {
      const options = [...optionsFor(`memory ${batch}`, input), "--workers", "1", "--batch", String(batch)];
      const { stderr } = spawnSync(process.execPath, options, { cwd: example, encoding: "utf8", env });
      return Number(/(\d+) MB of memory/.exec(stderr)?.[1]);
    };
    const [short, fourTimes] = [long(150), long(600)];
    const [small, large, held] = [peak(short, 10), peak(fourTimes, 10), peak(fourTimes, 600)];
    expect(large / small).toBeLessThan(1.25);
    // The measure can tell: with all rows in one batch the same file shows.
    expect(held / small).toBeGreaterThan(1.5);
  });
});

describe("the same functions elsewhere", () => {
  const NUMBERS = ["farm", "plot", "product_in_all", "measure_per_load"];
  it("give a SQL engine the same totals", () => {
    const printed = execFileSync(process.execPath, ["sql.mjs", sample], { cwd: example, encoding: "utf8" });
    const told = printed
      .trim()
      .split("\n")
      .map((text) => JSON.parse(text) as Record<string, string | number>);
    const totals = told.filter((row) => row.amount !== undefined);
    for (const { farm, product, amount, unit, plots } of totals) {
      const own = doses.filter((dose) => dose.farm === farm && dose.product === product);
      expect(own.map(({ product_unit }) => product_unit)).toEqual(Array(Number(plots)).fill(unit));
      const sum = own.reduce((total, dose) => total + Number(dose.product_in_all), 0);
      expect(Math.abs(Number(amount) / sum - 1)).toBeLessThan(1e-12);
    }
    expect(totals.reduce((count, { plots }) => count + Number(plots), 0)).toBe(doses.length);
    expect(told.filter(({ fault }) => fault !== undefined).length).toBe(8);
    expect(told.find(({ plot }) => plot === "Squash")?.column).toBe("row_length (ft)");
  });

  it("run from one script where there is nothing but the language", () => {
    // As engines do that run functions in JavaScript: no modules, no Node, no eval.
    const [{ text } = expect.fail("no bundle")] = buildSync({
      entryPoints: [join(example, "src/spray-dose.mjs")],
      bundle: true,
      format: "iife",
      globalName: "season",
      platform: "neutral",
      mainFields: ["module", "main"],
      target: "es2022",
      write: false,
      logLevel: "error",
    }).outputFiles;
    const engine = createContext(Object.create(null) as object, {
      codeGeneration: { strings: false, wasm: false },
    });
    runInContext(text, engine);
    const [titles = [], ...rows] = cellsOf(readFileSync(sample, "utf8"));
    const told = rows
      .filter((cells) => cells.length === titles.length)
      .map((cells) => JSON.stringify(Object.fromEntries(titles.map((title, i) => [title, cells[i]]))))
      .map((row) => runInContext(`season.sprayDose(${JSON.stringify(row)})`, engine) as string)
      .map((answer) => (JSON.parse(answer) as { dose?: Record<string, string | number> }).dose)
      .filter((dose) => dose !== undefined);
    const shown = (rows: readonly Readonly<Record<string, string | number>>[]): string[][] =>
      rows.map((row) => NUMBERS.map((name) => String(row[name]).replace(/^'/, "")));
    expect(shown(told)).toEqual(shown(doses));
  });

  it("are quoted as they are in the guide page", () => {
    const page = readFileSync(join(root, "docs/large-batches.md"), "utf8");
    const quotes = [...page.matchAll(/```js\n\/\/ examples\/season-batch\/(\S+)\n([\s\S]*?)```/g)];
    for (const [, name = "", code = ""] of quotes)
      expect(readFileSync(join(example, name), "utf8").replace(/\s+/g, " ")).toContain(
        code.replace(/\s+/g, " ").trim(),
      );
    expect(quotes.length).toBe(page.match(/```js\n/g)?.length);
  });
});
