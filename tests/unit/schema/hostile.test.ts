import { describe, expect, it } from "vitest";
import { parsePlanInput, plotSchema } from "../../../src/schema/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";

const paths = (value: unknown): string[] =>
  errorOf(() => parsePlanInput(value)).issues.map(({ path }) => path);

describe("a job that means harm", () => {
  it.each(["__proto__", "constructor", "prototype", "toString", "hasOwnProperty"])(
    "cannot bring in a field named %s, at any depth",
    (name) => {
      const evil = `"${name}": { "polluted": true, "workingFill": { "value": 1, "unit": "gal" } }`;
      const text = JSON.stringify(TWO_PRODUCTS);
      const sprayer = text.replace('"sprayer":{', `"sprayer":{${evil},`);
      const first = text.replace("{", `{${evil},`);
      expect(paths(JSON.parse(sprayer))).toEqual([`sprayer.${name}`]);
      expect(paths(JSON.parse(first))).toEqual([name]);
      expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    },
  );

  it("cannot bring one in beside a number and its unit, and each result is a plain object", () => {
    const text = JSON.stringify(TWO_PRODUCTS).replace('"tank":{', '"tank":{"__proto__":{"polluted":true},');
    expect(paths(JSON.parse(text))).toEqual(["sprayer.tank.__proto__"]);
    const { tank } = parsePlanInput(TWO_PRODUCTS).sprayer;
    expect(Object.getPrototypeOf(tank)).toBe(Object.prototype);
    expect(tank).toEqual(TWO_PRODUCTS.sprayer.tank);
  });

  it("shares nothing with what it was read from", () => {
    const job = structuredClone(TWO_PRODUCTS) as { sprayer: { tank: { value: number } } };
    const read = parsePlanInput(job);
    job.sprayer.tank.value = 99;
    expect(read).toEqual(TWO_PRODUCTS);
  });

  it("may be nested a hundred thousand deep wherever it likes", () => {
    let list: unknown = [];
    let object: unknown = {};
    for (let i = 0; i < 100_000; i++) [list, object] = [[list], { add: object, rate: object, kind: object }];
    for (const deep of [list, object]) {
      for (const field of ["plot", "calibration", "sprayer", "products", "tools", "reserve", "today"])
        expect(paths({ ...TWO_PRODUCTS, [field]: deep })[0]).toMatch(new RegExp(`^${field}`));
      expect(paths({ ...TWO_PRODUCTS, sprayer: { tank: deep } })[0]).toMatch(/^sprayer\.tank/);
      const composite = { kind: "composite", add: [deep] };
      expect(paths({ ...TWO_PRODUCTS, plot: composite })[0]).toMatch(/^plot\.add\[0\]/);
    }
  });

  it("may hold ten million letters: a name is kept, a quantity refused, and an error shows a few of them", () => {
    const long = "9".repeat(10_000_000);
    const named = { ...TWO_PRODUCTS, products: [{ ...TWO_PRODUCTS.products[0], name: long }] };
    expect(parsePlanInput(named).products[0]?.name).toBe(long);
    const error = errorOf(() =>
      parsePlanInput({ ...TWO_PRODUCTS, sprayer: { tank: long, [long]: 1 }, tools: long, split: long }),
    );
    expect(error.issues.map(({ path }) => path.slice(0, 12))).toEqual([
      "sprayer.tank",
      "sprayer.9999",
      "split",
      "tools",
    ]);
    for (const { path, message } of error.issues) expect(path.length + message.length).toBeLessThan(600);
  });
});

/** Plots that count how often any of their fields is read. */
function counted(length: number): { plots: object[]; reads: () => number } {
  let reads = 0;
  const watch: ProxyHandler<object> = {
    get: (target, name, receiver) => {
      reads++;
      return Reflect.get(target, name, receiver);
    },
  };
  const size = { value: 10, unit: "m" };
  const plots = Array.from(
    { length },
    () => new Proxy({ kind: "rectangle", length: size, width: size }, watch),
  );
  return { plots, reads: () => reads };
}

describe("a job of very many plots", () => {
  it("is read with work in proportion to their number", () => {
    const work = [1000, 2000, 4000].map((length) => {
      const { plots, reads } = counted(length);
      parsePlanInput({ ...TWO_PRODUCTS, plot: plots });
      return reads() / length;
    });
    expect(work[0]).toBeGreaterThan(3);
    expect(work[1]).toBe(work[0]);
    expect(work[2]).toBe(work[0]);
  });

  it("stops at the first kind that is no kind, plot by plot and not plots by kinds", () => {
    const { plots, reads } = counted(100);
    expect(plotSchema().safeParse(plots).success).toBe(false);
    expect(reads()).toBe(0);
  });
});
