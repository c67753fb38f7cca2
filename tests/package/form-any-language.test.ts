import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { installInto, root } from "./pack.mjs";

// As a person uses it: the page is fetched, its fields are filled in, and it is sent.
const example = join(root, "examples/form-any-language");
const out = mkdtempSync(join(tmpdir(), "form-"));
let server: ChildProcess;
let address = "";

beforeAll(async () => {
  installInto(example);
  server = spawn(process.execPath, ["main.mjs", "--port", "0"], { cwd: example });
  address = await new Promise((resolve, reject) => {
    server.stdout?.on("data", (text) => resolve(/http:\S+\//.exec(String(text))?.[0] ?? ""));
    server.stderr?.on("data", (text) => reject(new Error(String(text))));
  });
});

afterAll(() => {
  server?.kill();
  rmSync(out, { recursive: true, force: true });
});

type Fields = Record<string, string>;

/** What the page would send: each field's name and what stands in it. */
function fieldsIn(page: string): Fields {
  const found: Fields = {};
  for (const [, attributes = ""] of page.matchAll(/<input ([^>]*)>/g))
    found[attribute(attributes, "name")] = attribute(attributes, "value");
  for (const [, attributes = "", options = ""] of page.matchAll(/<select ([^>]*)>([\s\S]*?)<\/select>/g)) {
    const [, value, text = ""] = /<option(?: value="([^"]*)")? selected>([^<]*)/.exec(options) ?? [];
    found[attribute(attributes, "name")] = value ?? text;
  }
  return found;
}

const attribute = (text: string, name: string): string =>
  new RegExp(`${name}="([^"]*)"`).exec(text)?.[1] ?? "";

async function send(fields: Fields): Promise<string> {
  const response = await fetch(address, { method: "POST", body: new URLSearchParams(fields) });
  expect(response.status).toBe(200);
  return response.text();
}

const blank = async (): Promise<string> => (await fetch(address)).text();

/** The example job with some fields filled in otherwise, sent to be planned. */
async function plan(changes: Fields): Promise<string> {
  return send({ ...fieldsIn(await blank()), ...changes, plan: "1" });
}

/** Each fault by the name of the field, or the group of fields, that it stands beside. */
function faultsIn(page: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, text = "", place = ""] of page.matchAll(/id="f-([\w-]+)-hint">((?:(?!<\/span>)[\s\S])*)/g)) {
    const fault = /class="fault">([^<]*)/.exec(place)?.[1];
    if (fault !== undefined) found[text] = fault;
  }
  for (const [, text = "", fault = ""] of page.matchAll(
    /<fieldset[^>]* id="f-([\w-]+)"><legend>[^<]*<\/legend>(?:<small>[^<]*<\/small>)?<strong class="fault">([^<]*)/g,
  ))
    found[text] = fault;
  return found;
}

const schema = () =>
  JSON.parse(
    readFileSync(join(example, "node_modules/swath-to-spoon/dist/schema/plan-input.schema.json"), "utf8"),
  );

describe("the form", () => {
  it("asks what the schema asks, with its words, its ranges and its lists", async () => {
    const page = await blank();
    expect(page.replace(/<[^>]*>/g, "")).not.toMatch(/undefined|[a-z]_[a-z]/);
    const { properties, required, $defs } = schema();
    for (const key of required)
      expect(page).toContain(`<legend>${key === "tools" ? "Products" : capital(key)}`);
    expect(page).toContain(properties.tools.description);
    expect(page).toContain($defs.Sprayer.properties.tank.description);
    expect(/<input type="number" step="1" min="1"[^>]* name="plot.rows"/.test(page)).toBe(true);
    const [, units = ""] = /<select [^>]*name="sprayer.tank.unit"[^>]*>([\s\S]*?)<\/select>/.exec(page) ?? [];
    const listed = [...units.matchAll(/<option value="([^"]*)"/g)].map(([, unit]) => unit);
    expect(listed).toEqual(["", ...$defs.Volume.anyOf[0].properties.unit.enum]);
  });

  it("plans the job that it was given", async () => {
    // 14 rows of 160 ft, 30 in sprayed on each: 14 x 160 ft x 2.5 ft = 5,600 sq ft.
    const page = await plan({});
    expect(page).toContain("Spray job worksheet");
    expect(page).toContain("5,600 sq ft");
  });

  it("tells every fault beside its field, keeps what was typed, and plans nothing", async () => {
    const page = await plan({
      "plot.rows": "0",
      "plot.bandWidth.value": "-3",
      "sprayer.tank.value": "",
      "products[0].name": "",
      "products[0].rate.unit": "pints",
    });
    expect(Object.keys(faultsIn(page)).sort()).toEqual([
      "plot-bandWidth-value",
      "plot-rows",
      "products-0-name",
      "products-0-rate-unit",
      "sprayer-tank-value",
    ]);
    expect(faultsIn(page)["sprayer-tank-value"]).toBe("Required.");
    expect(faultsIn(page)["products-0-rate-unit"]).toContain("gal/ac");
    expect(fieldsIn(page)["products[0].rate.unit"]).toBe("pints");
    expect(fieldsIn(page)["plot.bandWidth.value"]).toBe("-3");
    expect(page).not.toContain("worksheet");
  });

  it("tells what only the whole job shows beside its field as well", async () => {
    const page = await plan({ "sprayer.workingFill.value": "5", "sprayer.workingFill.unit": "gal" });
    expect(faultsIn(page)["sprayer-workingFill"]).toContain("You can't fill a 4 gal tank to 5 gal.");
  });

  it("opens the lid over a fault", async () => {
    const name = "products[0].rate";
    const way = { [`${name}#`]: "activeIngredient, contains", show: name };
    const fields = fieldsIn(await send({ ...fieldsIn(await blank()), ...way }));
    const told = { activeIngredient: ["2", "lb/ac", ""], contains: ["50", "%", "w/w"] };
    for (const [part, [value = "", unit = "", basis = ""]] of Object.entries(told))
      Object.assign(fields, {
        [`${name}.${part}.value`]: value,
        [`${name}.${part}.unit`]: unit,
        [`${name}.${part}.basis`]: basis,
      });
    const asked = await send({ ...fields, [`${name}.contains#`]: "value, unit, basis", plan: "1" });
    // What weighs so much per cent of a liquid cannot be told without its density, which most rates do not need.
    expect(faultsIn(asked)).toEqual({ "products-0-rate-density": expect.stringContaining("density") });
    const [lid = ""] =
      /<details[^>]*>(?:(?!<details)[\s\S])*id="f-products-0-rate-density"/.exec(asked) ?? [];
    expect(lid.startsWith("<details open>")).toBe(true);
  });

  it("shows the fields of another way to tell a thing, and plans with them", async () => {
    const switched = await send({ ...fieldsIn(await blank()), "plot#": "rectangle", show: "plot" });
    const fields = fieldsIn(switched);
    expect(fields).not.toHaveProperty(["plot.rows"]);
    expect(fields).toHaveProperty(["plot.length.value"], "");
    expect(faultsIn(switched)).toEqual({});
    const sides = { "plot.length.value": "121", "plot.width.value": "90" };
    const units = { "plot.length.unit": "ft", "plot.width.unit": "ft" };
    // 121 ft x 90 ft = 10,890 sq ft.
    expect(await send({ ...fields, ...sides, ...units, plan: "1" })).toContain("10,890 sq ft");
  });

  it("shows a form of its own for every kind of plot and of calibration", async () => {
    const first = fieldsIn(await blank());
    const page = await blank();
    for (const place of ["plot", "calibration"]) {
      const [, list = ""] = new RegExp(`<select name="${place}#">([\\s\\S]*?)</select>`).exec(page) ?? [];
      const ways = [...list.matchAll(/<option value="([^"]*)"/g)].map(([, way = ""]) => way);
      expect(ways.length).toBeGreaterThan(8);
      const seen = new Set<string>();
      for (const way of ways) {
        const fields = fieldsIn(await send({ ...first, [`${place}#`]: way, show: place }));
        expect(fields[`${place}#`], way).toBe(way);
        seen.add(
          Object.keys(fields)
            .filter((name) => name.startsWith(place))
            .join(),
        );
      }
      // Two shapes may be told by fields of the same names: a rectangle and an ellipse.
      expect(seen.size).toBeGreaterThan(ways.length - 3);
    }
  });

  it("takes another product, and lets an empty one go", async () => {
    const two = fieldsIn(await send({ ...fieldsIn(await blank()), add: "products" }));
    expect(two).toHaveProperty(["products[1].name"], "");
    expect(await send({ ...two, plan: "1" })).toContain("worksheet");
    const page = await send({ ...two, "products[1].name": "Product B", plan: "1" });
    expect(Object.keys(faultsIn(page))).toContain("products-1-form");
  });

  it("shows names as text, and takes the names of fields as nothing else", async () => {
    const page = await plan({ "products[0].name": '"><script>1</script>', "plot.rows": "0" });
    expect(page).not.toContain("<script");
    const odd = { "__proto__.rows": "1", "plot[0].x": "1", "plot.rows.deep": "2", "products#": "1e9" };
    expect(await send({ ...fieldsIn(await blank()), ...odd, plan: "1" })).toContain("Spray job");
    expect(({} as Fields).rows).toBeUndefined();
  });
});

/** A Python with the package jsonschema. */
const python = ["python3", "/usr/bin/python3"].find(
  (name) => spawnSync(name, ["-c", "import jsonschema"]).status === 0,
);
if (python === undefined && !process.env.CI) console.warn("skipped: no Python with jsonschema found");

describe.skipIf(python === undefined && !process.env.CI)("the check in another language", () => {
  function check(job: object): { status: number | null; faults: string[] } {
    if (python === undefined) throw new Error("CI has no Python with jsonschema");
    const file = join(out, "job.json");
    writeFileSync(file, JSON.stringify(job));
    const { status, stdout, stderr } = spawnSync(python, ["check.py", file], {
      cwd: example,
      encoding: "utf8",
    });
    expect(stderr).toBe("");
    return { status, faults: stdout.trim().split("\n").filter(Boolean) };
  }

  const job = JSON.parse(readFileSync(join(example, "job.json"), "utf8"));

  it("finds nothing wrong with the example", () => {
    expect(check(job)).toEqual({ status: 0, faults: [] });
  });

  const liter = (value: number) => ({ value, unit: "L" });
  const meter = (value: number) => ({ value, unit: "m" });

  it.each<[wrong: object, places: string[]]>([
    [
      { ...job, plot: { ...job.plot, rows: 0, bandWidth: meter(-3) }, sprayer: {} },
      ["plot.bandWidth.value", "plot.rows", "sprayer.tank"],
    ],
    [
      { ...job, products: [{ form: "wet", rate: { value: 1, unit: "pints" } }], extra: 1 },
      ["extra", "products[0].form", "products[0].name", "products[0].rate.unit"],
    ],
    [
      { ...job, products: [], tools: "spoons", today: { conditions: { nozzleCount: 1.5 } } },
      ["products", "today.conditions.nozzleCount", "today.date", "tools"],
    ],
    [
      { ...job, calibration: { kind: "catch", catches: [liter(1), liter(0)] } },
      ["calibration.catches[1].value", "calibration.speed", "calibration.time", "calibration.width"],
    ],
    [{ ...job, plot: { kind: "triangle", sides: [meter(3), meter(4)] } }, ["plot.sides"]],
    [
      { ...job, plot: { kind: "circle", diameter: "20 m", radius: 4 }, reserve: { percent: 120 } },
      ["plot.radius", "reserve.percent"],
    ],
    [{ ...job, plot: [{ kind: "circle", diameter: { value: 2 } }, 7] }, ["plot[0].diameter.unit", "plot[1]"]],
    [
      { ...job, plot: null, sprayer: [], products: "Product A", split: 4 },
      ["plot", "products", "split", "sprayer"],
    ],
  ])("tells the same places as the form's check: %#", async (wrong, places) => {
    const { status, faults } = check(wrong);
    expect(status).toBe(1);
    const told = (lines: string[]) => [...new Set(lines)].sort();
    expect(told(faults.map((line) => line.split(": ")[0] ?? ""))).toEqual(places);
    const { faultsOf } = await import(join(example, "check.mjs"));
    const { narrowed } = await import(join(example, "narrow.mjs"));
    const own: { path: string }[] = faultsOf(narrowed(schema(), wrong), wrong);
    expect(told(own.map(({ path }) => path))).toEqual(places);
  });
});

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
