import { describe, expect, it } from "vitest";
import { groundArea, treatedArea } from "../../../src/area/index.ts";
import {
  averageFlow,
  flowFrom,
  timePerPlant,
  timeToCover,
  timeToSpray,
  volumePerPlant,
} from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const caught = { caught: qty(600, "mL"), time: qty(30, "s") };
const plot = { area: treatedArea(qty(1, "ac")), width: qty(8.25, "ft"), speed: qty(2, "mph") };

describe("a timed catch", () => {
  it("gives the flow in the system of what was caught", () => {
    expect(flowFrom(caught)).toEqual(qty(1.2, "L/min"));
    expect(flowFrom({ caught: qty(64, "fl_oz"), time: qty(15, "s") })).toEqual(qty(2, "gal/min"));
    expect(flowFrom({ caught: qty(4, "imp_pt"), time: qty(0.25, "min") })).toEqual(qty(2, "imp_gal/min"));
  });

  it("of several is all that was caught over all the time, not the mean of the flows", () => {
    const catches = [caught, { caught: qty(3, "L"), time: qty(1, "min") }];
    expect(averageFlow({ catches })).toEqual(qty(2.4, "L/min"));
    expect(averageFlow({ catches: [caught] })).toEqual(flowFrom(caught));
  });

  it("keeps no reading's resolution", () => {
    const read = { ...qty(600, "mL"), resolution: qty(10, "mL") };
    expect(flowFrom({ ...caught, caught: read })).toEqual(qty(1.2, "L/min"));
  });

  refusesMisuse("flowFrom", flowFrom, caught, ["caught", "time"]);
  refusesMisuse("averageFlow", averageFlow, { catches: [caught, caught] }, [
    "catches",
    "catches.1.time",
    "catches.0.caught",
  ]);

  it("refuses no time, nothing caught, weights and no catches", () => {
    expectRefused(() => flowFrom({ ...caught, time: qty(0, "s") }), "out-of-range", "time");
    expectRefused(() => flowFrom({ ...caught, caught: qty(0, "L") }), "out-of-range", "caught");
    expectRefused(() => flowFrom({ ...caught, caught: qty(5, "oz") as never }), "wrong-dimension", "caught");
    expectRefused(() => averageFlow({ catches: [] }), "too-few", "catches");
    expectRefused(
      () => flowFrom({ caught: qty(1e308, "mL"), time: qty(1e-300, "s") }),
      "not-finite",
      "caught",
    );
  });
});

describe("a plant sprayed for a time", () => {
  it("gets the flow times the time, from a flow as from a catch", () => {
    expect(volumePerPlant({ flow: caught, time: qty(4, "s") })).toEqual(qty(80, "mL"));
    expect(volumePerPlant({ flow: qty(20, "mL/s"), time: qty(4, "s") })).toEqual(qty(80, "mL"));
    expect(volumePerPlant({ flow: qty(1, "gal/min"), time: qty(30, "s") })).toEqual(qty(64, "fl_oz"));
  });

  it("is sprayed for the volume over the flow, in seconds", () => {
    expect(timePerPlant({ flow: caught, each: qty(80, "mL") })).toEqual(qty(4, "s"));
    expect(timePerPlant({ flow: qty(2, "gal/min"), each: qty(0.5, "gal") })).toEqual(qty(15, "s"));
    expect(timePerPlant({ flow: qty(2, "gal/min"), each: qty(64, "fl_oz") })).toEqual(qty(15, "s"));
  });

  it("is the one the inverse of the other", () => {
    const time = timePerPlant({ flow: caught, each: qty(3, "fl_oz") });
    expect(volumePerPlant({ flow: qty(1.2, "L/min"), time }).value).toBeCloseTo(88.7205886875, 10);
  });

  refusesMisuse("volumePerPlant", volumePerPlant, { flow: caught, time: qty(4, "s") }, [
    "flow",
    "flow.caught",
    "flow.time",
    "time",
  ]);
  refusesMisuse("timePerPlant", timePerPlant, { flow: qty(1, "L/min"), each: qty(1, "L") }, ["flow", "each"]);

  it("is not given a label's rate per gallon for a volume per plant", () => {
    const each = qty(5, "fl_oz/gal") as never;
    const error = refusal(() => timePerPlant({ flow: caught, each }));
    expect([error.code, error.path]).toEqual(["wrong-dimension", "each"]);
    expect(error.message).toBe("5 fl oz/gal is a volume in a volume. Enter a volume, such as 5 gal.");
  });

  it("is not given a flow and a catch at once, or half a catch", () => {
    const both = { ...caught, value: 3, unit: "L/min" } as never;
    expectRefused(() => volumePerPlant({ flow: both, time: qty(4, "s") }), "unknown-field", "flow.value");
    const half = { caught: qty(1, "L") } as never;
    expectRefused(() => volumePerPlant({ flow: half, time: qty(4, "s") }), "missing", "flow.time");
  });
});

describe("a tank and a plot", () => {
  it("last the volume over the flow, in minutes", () => {
    expect(timeToSpray({ flow: caught, volume: qty(12, "L") })).toEqual(qty(10, "min"));
    expect(timeToSpray({ flow: qty(64, "fl_oz/min"), volume: qty(4, "gal") })).toEqual(qty(8, "min"));
  });

  it("is covered as the handbooks have it: an acre at 8.25 ft and 1 mph in an hour", () => {
    // Acres per hour = mph × feet / 8.25: the constant is 43,560 / 5,280 ft.
    expect(timeToCover(plot)).toEqual(qty(30, "min"));
    expect(timeToCover({ ...plot, efficiencyPercent: 50 })).toEqual(qty(60, "min"));
    expect(timeToCover({ ...plot, efficiencyPercent: 100 })).toEqual(timeToCover(plot));
  });

  it("is covered in the time that its strips take at a timed pace", () => {
    const speed = { distance: qty(50, "m"), time: qty(40, "s") };
    const small = { area: treatedArea(qty(1000, "m2")), width: qty(2, "m") };
    expect(timeToCover({ ...small, speed }).value).toBeCloseTo(400 / 60, 12);
    expect(timeToCover({ ...small, speed, efficiencyPercent: 80 }).value).toBeCloseTo(500 / 60, 12);
  });

  refusesMisuse("timeToSpray", timeToSpray, { flow: caught, volume: qty(4, "L") }, ["flow", "volume"]);
  refusesMisuse("timeToCover", timeToCover, { ...plot, efficiencyPercent: 80 }, [
    "area",
    "width",
    "speed",
    "efficiencyPercent",
  ]);

  it("refuses ground for treated area, and an efficiency that is none", () => {
    const ground = groundArea(qty(1, "ac")) as never;
    expectRefused(() => timeToCover({ ...plot, area: ground }), "wrong-area", "area");
    for (const efficiencyPercent of [0, -5, 101])
      expectRefused(() => timeToCover({ ...plot, efficiencyPercent }), "out-of-range", "efficiencyPercent");
  });

  it("notes every fault at once, and takes null for what may be left out", () => {
    const bad = { area: plot.area, width: qty(0, "ft"), speed: qty(0, "mph"), effeciencyPercent: 80 };
    expect(refusal(() => timeToCover(bad)).issues.map(({ path }) => path)).toEqual([
      "width",
      "speed",
      "effeciencyPercent",
    ]);
    expect(timeToCover({ ...plot, efficiencyPercent: null as never })).toEqual(timeToCover(plot));
  });
});
