import { describe, expect, it } from "vitest";
import {
  comparePlans,
  type Plan,
  planApplication,
  planSensitivity,
  readPlan,
  readRecord,
  reconcile,
  seasonSoFar,
} from "../../../src/plan/index.ts";
import { planWorking } from "../../../src/plan/plan-steps.ts";
import { qty } from "../../../src/units/index.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const PLAN = planApplication(TWO_PRODUCTS);
const saved = (): Plan => JSON.parse(JSON.stringify(PLAN));

/** The saved plan with something else at a place. */
function savedWith(place: readonly (string | number)[], value: unknown): Plan {
  const plan = saved();
  const last = place[place.length - 1] as string;
  let node = plan as unknown as Record<string, unknown>;
  for (const key of place.slice(0, -1)) node = node[key] as Record<string, unknown>;
  node[last] = value;
  return plan;
}

describe("a plan that was saved", () => {
  it("reads as the plan that it was, figure for figure", () => {
    expect(readPlan(saved())).toEqual(PLAN);
    expect(readPlan(PLAN)).toEqual(PLAN);
  });

  it("is checked wherever a plan is used", () => {
    const changed = savedWith(["loads", 0, "products", 0, "amount", "value"], 1);
    for (const use of [planWorking, planSensitivity])
      expectRefused(() => use(changed), "conflict", "plan.loads[0].amounts[0]");
    expectRefused(() => comparePlans(PLAN, changed), "conflict", "after.loads[0].amounts[0]");
    const done = { finished: "2026-05-02T09:30", left: PLAN.leftover.carrier };
    expectRefused(() => reconcile(changed, done), "conflict", "plan.loads[0].amounts[0]");
  });

  it("serves wherever a plan does", () => {
    const kept = saved();
    expect(planWorking(kept)).toEqual(planWorking(PLAN));
    expect(planSensitivity(kept)).toEqual(planSensitivity(PLAN));
  });

  it.each<[string, readonly (string | number)[], unknown, string]>([
    ["the total mix", ["carrier", "total", "value"], 4.001, "carrier.total"],
    ["a load's amount", ["loads", 0, "products", 0, "amount", "value"], 1, "loads[0].amounts[0]"],
    ["a load's water", ["loads", 0, "water"], null, "loads[0].water"],
    ["the rate", ["rate"], qty(1, "gal/ac"), "rate"],
    ["a product's total", ["totals", "products", 0, "amount", "value"], 1, "totals.products[0].amount"],
    ["the input", ["input", "products", 0, "rate", "value"], 1, "loads[0].water"],
    ["the loads", ["loads"], [], "loads[0].carrier"],
  ])("is refused where somebody changed %s", (_, place, value, path) => {
    expectRefused(() => readPlan(savedWith(place, value)), "conflict", path, "Plan the job again");
  });

  it("is refused where it is none, of another version, or of an input that can't be", () => {
    expectRefused(() => readPlan({}), "not-a-quantity", "");
    expectRefused(() => readPlan(5), "not-a-quantity", "");
    expectRefused(() => readPlan(undefined), "missing", "");
    expectRefused(() => readPlan({ ...saved(), version: 2 }), "unknown-choice", "version");
    const noTank = savedWith(["input", "sprayer", "tank", "value"], 0);
    expectRefused(() => readPlan(noTank), "out-of-range", "input.sprayer.tank");
    expectRefused(() => readPlan({ ...saved(), area: null }), "unreadable", "");
    expectRefused(() => planSensitivity({} as Plan), "not-a-quantity", "plan");
    expectRefused(() => reconcile(5 as never, {} as never), "not-a-quantity", "plan");
  });
});

describe("a record that was saved", () => {
  const record = reconcile(PLAN, {
    finished: "2026-05-02T09:30-05:00",
    started: "2026-05-02T08:00-05:00",
    applicator: "A. Grower",
    left: PLAN.leftover.carrier,
  }).record;

  it("reads as it was", () => {
    expect(readRecord(JSON.parse(JSON.stringify(record)))).toEqual(record);
  });

  it("is refused where a field is wrong, or isn't known", () => {
    const bad = (change: object) => () => readRecord({ ...record, ...change });
    expectRefused(bad({ version: 7 }), "unknown-choice", "version");
    expectRefused(bad({ date: "2026-02-30" }), "unreadable", "date");
    expectRefused(bad({ treated: { ...record.treated, of: "ground" } }), "wrong-area", "treated");
    expectRefused(
      bad({ products: [{ name: "Product A", applied: qty(-1, "mL") }] }),
      "out-of-range",
      "products[0].applied",
    );
    expectRefused(bad({ started: "2026-05-03T08:00-05:00" }), "conflict", "started");
    expectRefused(bad({ aplicator: "A. Grower" }), "unknown-field", "aplicator", "applicator");
    expectRefused(bad({ clockChange: "maybe" }), "unknown-choice", "clockChange");
    expectRefused(() => readRecord(JSON.stringify(record)), "not-a-quantity", "", "JSON.parse");
  });

  it("is not the result that holds it", () => {
    const done = reconcile(PLAN, { finished: "2026-05-02T09:30", left: PLAN.leftover.carrier });
    const error = refusal(() => readRecord(done));
    expect(error.issues.map(({ path, message }) => [path, message])).toEqual([
      ["", "This only holds a record. Pass its record: done.record."],
    ]);
    const records = [done.record, done] as never;
    expectRefused(() => seasonSoFar({ product: "Product A", records }), "conflict", "records[1]");
  });
});
