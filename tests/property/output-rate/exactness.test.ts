import fc from "fast-check";
import { describe, it } from "vitest";
import { groundArea, treatedArea } from "../../../src/area/index.ts";
import {
  averageFlow,
  averageSpeed,
  catchRate,
  checkSpreader,
  diluteRate,
  directStripArea,
  directStripDistance,
  directStripRate,
  flowFrom,
  handSprayRates,
  pressureForOutput,
  rateAtSpeed,
  ratePerPlant,
  solveOutput,
  speedFrom,
  spreaderCatch,
  spreaderRate,
  stripRate,
  stripRuns,
  timeFor,
  timePerPlant,
  timeToCover,
  timeToSpray,
  treeRowRate,
  treeRowVolume,
  volumePerPlant,
} from "../../../src/output-rate/index.ts";
import { type Dimension, type Quantity, type Unit, unitsOf } from "../../../src/units/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectExact, expectExactBeside, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";

keepWorstErrors("output-rate");

/** Amounts of a dimension in any of its units. */
function amounts<U extends Unit>(dimension: Dimension): fc.Arbitrary<Quantity<U>> {
  const unit = fc.constantFrom(...(unitsOf(dimension) as U[]));
  return fc.record({ value: fc.double({ min: 1e-3, max: 1e4, noNaN: true }), unit });
}

const length = amounts<"ft">("length");
const volume = amounts<"L">("volume");
const mass = amounts<"kg">("mass");
const time = amounts<"s">("time");
const speed = amounts<"mph">("speed");
const flow = amounts<"L/min">("flow");
const rate = amounts<"L/ha">("volumeRate");

/** The exact size of a quantity in SI units (litres for volume). */
const exact = ({ value, unit }: Quantity): Rational => Rational.fromNumber(value).times(exactSize(unit));

function expectRight(name: string, ours: Quantity, right: Rational): void {
  expectExact(name, ours.value, right.over(exactSize(ours.unit)));
}

const RUNS = runs(1000);

describe("output-rate, against exact rational arithmetic", () => {
  it("gives strip rates within 8 ulp", () => {
    fc.assert(
      fc.property(fc.oneof(volume, mass), length, length, (used, swath, distance) => {
        const ours = stripRate({ used, swath, distance } as never) as Quantity;
        expectRight("stripRate", ours, exact(used).over(exact(swath).times(exact(distance))));
      }),
      RUNS,
    );
  });

  it("gives spreader rates, checks and catches within 8 ulp", () => {
    const target = amounts<"lb/ac">("massRate");
    const perRow = amounts<"oz/1000ft">("massPerLength");
    const directions = fc.constantFrom(1, 2) as fc.Arbitrary<1 | 2>;
    const area = amounts<"ft2">("area").map((one) => ({ ...one, of: "treated" as const }));
    fc.assert(
      fc.property(mass, length, length, area, target, directions, (used, swath, distance, on, aim, ways) => {
        const strip = exact(swath).times(exact(distance));
        expectRight("spreaderRate", spreaderRate({ used, swath, distance }), exact(used).over(strip));
        expectRight("spreaderRate", spreaderRate({ used, area: on }), exact(used).over(exact(on)));
        const check = checkSpreader({ used, area: on, target: aim, directions: ways });
        expectRight("checkSpreader, rate", check.rate, exact(used).over(exact(on)));
        expectRight("checkSpreader, per pass", check.perPass, exact(aim).over(Rational.of(ways)));
        expectRight(
          "spreaderCatch",
          spreaderCatch({ target: aim, swath, distance, directions: ways }),
          exact(aim).times(strip).over(Rational.of(ways)),
        );
      }),
      RUNS,
    );
    fc.assert(
      fc.property(mass, length, perRow, (used, rowLength, aim) => {
        const rate = exact(used).over(exact(rowLength));
        expectRight("spreaderRate, along a row", spreaderRate({ used, rowLength }), rate);
        const { deviation } = checkSpreader({ used, rowLength, target: aim });
        // A difference: its error is counted beside the two rates that it is between.
        const percent = rate.minus(exact(aim)).over(exact(aim)).times(Rational.of(100));
        const beside = rate.over(exact(aim)).plus(Rational.of(1)).times(Rational.of(100));
        expectExactBeside("checkSpreader, deviation", deviation.value, percent, beside);
        expectRight(
          "spreaderCatch, along a row",
          spreaderCatch({ target: aim, rowLength }),
          exact(aim).times(exact(rowLength)),
        );
      }),
      RUNS,
    );
  });

  it("gives the mean of runs within 8 ulp", () => {
    const run = fc.record({ used: volume, swath: length, distance: length });
    fc.assert(
      fc.property(fc.array(run, { minLength: 2, maxLength: 6 }), (list) => {
        const total = list
          .map(({ used, swath, distance }) => exact(used).over(exact(swath).times(exact(distance))))
          .reduce((sum, one) => sum.plus(one));
        expectRight("stripRuns", stripRuns({ runs: list }).rate, total.over(Rational.of(list.length)));
      }),
      runs(300),
    );
  });

  it("gives catch rates within 8 ulp, at a speed and over a timed distance", () => {
    const catches = fc.array(volume, { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(catches, time, speed, length, (list, during, pace, width) => {
        const total = list.map(exact).reduce((sum, one) => sum.plus(one));
        const ours = catchRate({ catches: list, time: during, speed: pace, width });
        const over = exact(during).times(exact(pace)).times(exact(width)).times(Rational.of(list.length));
        expectRight("catchRate", ours, total.over(over));
      }),
      RUNS,
    );
    fc.assert(
      fc.property(catches, time, time, length, length, (list, during, timed, distance, width) => {
        const total = list.map(exact).reduce((sum, one) => sum.plus(one));
        const ours = catchRate({ catches: list, time: during, speed: { distance, time: timed }, width });
        const over = exact(during).times(exact(distance)).times(exact(width)).times(Rational.of(list.length));
        expectRight("catchRate", ours, total.times(exact(timed)).over(over));
      }),
      RUNS,
    );
  });

  it("gives direct-reading strips within 8 ulp for any pair of units", () => {
    const pairs = fc.record({
      catchUnit: fc.constantFrom(...unitsOf("volume")),
      rateUnit: fc.constantFrom(...unitsOf("volumeRate")),
    });
    fc.assert(
      fc.property(pairs, length, volume, (pair, width, caught) => {
        const area = exactSize(pair.catchUnit).over(exactSize(pair.rateUnit));
        expectRight("directStripArea", directStripArea(pair), area);
        expectRight("directStripDistance", directStripDistance({ ...pair, width }), area.over(exact(width)));
        const reading = exact(caught).over(exactSize(pair.catchUnit)).times(exactSize(pair.rateUnit));
        expectRight("directStripRate", directStripRate({ ...pair, caught }), reading);
      }),
      RUNS,
    );
  });

  it("gives row and hand rates within 8 ulp", () => {
    const plants = fc.integer({ min: 1, max: 1000 });
    fc.assert(
      fc.property(
        volume,
        length,
        length,
        length,
        plants,
        (used, rowLength, rowSpacing, plantSpacing, count) => {
          const row = { used, rowLength, rowSpacing, plantSpacing };
          const perLength = exact(used).over(exact(rowLength));
          const both = treeRowRate({ ...row, sides: 1 });
          expectRight("treeRowRate, per length", both.perLength, perLength.times(Rational.of(2)));
          expectRight(
            "treeRowRate, per area",
            both.perArea,
            perLength.times(Rational.of(2)).over(exact(rowSpacing)),
          );
          expectRight(
            "treeRowRate, per plant",
            both.perPlant as Quantity,
            perLength.times(Rational.of(2)).times(exact(plantSpacing)),
          );
          const hand = handSprayRates({ used, plants: count, plantSpacing, rowSpacing });
          const perPlant = exact(used).over(Rational.of(count));
          expectRight("handSprayRates, per plant", hand.perPlant as Quantity, perPlant);
          expectRight(
            "handSprayRates, per area",
            hand.perArea as Quantity,
            perPlant.over(exact(plantSpacing).times(exact(rowSpacing))),
          );
        },
      ),
      RUNS,
    );
  });

  it("solves for each of the four within 8 ulp", () => {
    fc.assert(
      fc.property(rate, flow, speed, length, (perArea, out, pace, width) => {
        expectRight(
          "solveOutput, rate",
          solveOutput({ flow: out, speed: pace, width }).rate,
          exact(out).over(exact(pace).times(exact(width))),
        );
        expectRight(
          "solveOutput, flow",
          solveOutput({ rate: perArea, speed: pace, width }).flow,
          exact(perArea).times(exact(pace)).times(exact(width)),
        );
        expectRight(
          "solveOutput, speed",
          solveOutput({ rate: perArea, flow: out, width }).speed,
          exact(out).over(exact(perArea).times(exact(width))),
        );
        expectRight(
          "solveOutput, width",
          solveOutput({ rate: perArea, flow: out, speed: pace }).width,
          exact(out).over(exact(perArea).times(exact(pace))),
        );
      }),
      RUNS,
    );
  });

  it("gives the pressure for an output within 8 ulp", () => {
    fc.assert(
      fc.property(amounts<"psi">("pressure"), flow, flow, (pressure, output, newOutput) => {
        const times = exact(newOutput).over(exact(output));
        expectRight(
          "pressureForOutput",
          pressureForOutput({ pressure, output, newOutput }).pressure,
          exact(pressure).times(times).times(times),
        );
      }),
      RUNS,
    );
  });

  it("gives speeds, times and rates at another speed within 8 ulp", () => {
    fc.assert(
      fc.property(length, time, speed, speed, rate, (distance, during, pace, other, perArea) => {
        expectRight("speedFrom", speedFrom({ distance, time: during }), exact(distance).over(exact(during)));
        expectRight("timeFor", timeFor({ distance, speed: pace }), exact(distance).over(exact(pace)));
        const passes = [
          { distance, time: during },
          { distance: { value: 200, unit: "ft" }, time: { value: 45, unit: "s" } },
        ] as const;
        const [far, long] = [exact(distance), exact(during)];
        const course = exact(passes[1].distance);
        expectRight(
          "averageSpeed",
          averageSpeed({ passes }),
          far.plus(course).over(long.plus(Rational.of(45))),
        );
        expectRight(
          "rateAtSpeed",
          rateAtSpeed({ rate: perArea, speed: pace, newSpeed: other }),
          exact(perArea).times(exact(pace)).over(exact(other)),
        );
      }),
      RUNS,
    );
  });

  it("gives flows, volumes and times of a hand gun within 8 ulp", () => {
    fc.assert(
      fc.property(volume, time, time, volume, flow, (caught, during, held, wanted, out) => {
        const one = { caught, time: during };
        const flowing = exact(caught).over(exact(during));
        expectRight("flowFrom", flowFrom(one), flowing);
        const other = { caught: { value: 3, unit: "L" }, time: { value: 45, unit: "s" } } as const;
        expectRight(
          "averageFlow",
          averageFlow({ catches: [one, other] }),
          exact(caught)
            .plus(Rational.of(3))
            .over(exact(during).plus(Rational.of(45))),
        );
        for (const [given, right] of [
          [one, flowing],
          [out, exact(out)],
        ] as const) {
          expectRight(
            "volumePerPlant",
            volumePerPlant({ flow: given, time: held }),
            right.times(exact(held)),
          );
          expectRight("timePerPlant", timePerPlant({ flow: given, each: wanted }), exact(wanted).over(right));
          expectRight("timeToSpray", timeToSpray({ flow: given, volume: wanted }), exact(wanted).over(right));
        }
      }),
      RUNS,
    );
  });

  it("gives the time for a plot within 8 ulp, at a speed and over a timed distance", () => {
    const percent = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        amounts<"ac">("area"),
        length,
        speed,
        length,
        time,
        percent,
        (plot, width, pace, distance, during, efficiencyPercent) => {
          const area = treatedArea(plot);
          const used = Rational.fromNumber(efficiencyPercent).over(Rational.of(100));
          const passes = exact(area).over(exact(width));
          expectRight("timeToCover", timeToCover({ area, width, speed: pace }), passes.over(exact(pace)));
          expectRight(
            "timeToCover",
            timeToCover({ area, width, speed: { distance, time: during }, efficiencyPercent }),
            passes.times(exact(during)).over(exact(distance).times(used)),
          );
        },
      ),
      RUNS,
    );
  });

  it("gives tree-row volumes and their dilute rates within 8 ulp", () => {
    // A canopy is narrower than its row is apart, and from a millimeter to 100 m deep on all the ground.
    const part = fc.double({ min: 0.01, max: 0.999, noNaN: true });
    const deep = fc.double({ min: 0.01, max: 50, noNaN: true });
    const inMeters = (meters: number, unit: Unit) => ({ value: meters / exactSize(unit).toNumber(), unit });
    const lengths = fc.constantFrom(...unitsOf("length"));
    fc.assert(
      fc.property(deep, part, deep, lengths, lengths, lengths, amounts("volumeConcentration"), (...drawn) => {
        const [high, of, apart, unit, other, third, spray] = drawn;
        const canopy = {
          height: inMeters(high, unit),
          width: inMeters(apart * of, other),
          rowSpacing: inMeters(apart, third),
        } as Parameters<typeof treeRowVolume>[0];
        const volume = exact(canopy.height)
          .times(exact(canopy.width))
          .over(exact(canopy.rowSpacing))
          .times(Rational.of(1000));
        expectRight("treeRowVolume", treeRowVolume(canopy), volume);
        const wets = spray as Parameters<typeof diluteRate>[0]["spray"];
        expectRight("diluteRate", diluteRate({ canopy, spray: wets }), volume.times(exact(spray)));
        const given = { value: high, unit: "m3/m2" } as const;
        const right = exact(given).times(exact(spray));
        expectRight("diluteRate", diluteRate({ canopy: given, spray: wets }), right);
      }),
      RUNS,
    );
  });

  it("gives a rate for each plant within 8 ulp", () => {
    const plants = fc.integer({ min: 1, max: 1000 });
    fc.assert(
      fc.property(rate, length, length, plants, amounts<"ac">("area"), (perArea, a, b, count, plot) => {
        expectRight(
          "ratePerPlant",
          ratePerPlant({ rate: perArea, rowSpacing: a, plantSpacing: b }),
          exact(perArea).times(exact(a)).times(exact(b)),
        );
        expectRight(
          "ratePerPlant",
          ratePerPlant({ rate: perArea, plants: count, ground: groundArea(plot) }),
          exact(perArea).times(exact(plot)).over(Rational.of(count)),
        );
      }),
      RUNS,
    );
  });
});
