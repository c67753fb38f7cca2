import { catchRate, solveOutput, speedFrom, timeFor } from "../../src/output-rate/index.ts";
import { convert, qty, valueIn } from "../../src/units/index.ts";
import cases from "./cases.json" with { type: "json" };
import { agrees, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const TOPIC = "03_timed_catch_speed";
const list = (one: HandbookCase, key: string): readonly number[] =>
  [one.inputs[key]?.[0] ?? []].flat().map(Number);
const number = (one: HandbookCase, key: string): number => Number(one.inputs[key]?.[0]);
const rateIn = (flow: number, speed: number, width: number, unit: "in" | "ft"): number =>
  solveOutput({ flow: qty(flow, "gal/min"), speed: qty(speed, "mph"), width: qty(width, unit) }).rate.value;

topic(TOPIC, () => {
  // The handbooks' constants: what one gallon a minute at one mile an hour over one inch (or foot) gives.
  agrees("const_5940", () => [{ key: "constant", ours: rateIn(1, 1, 1, "in"), within: 1e-9 }]);
  agrees("const_495", () => [{ key: "constant", ours: rateIn(1, 1, 1, "ft"), within: 1e-9 }]);

  publicationErrs("const_204_300ft", "204.545 is cut to 204: rounded it is 205", (one) => {
    const course = qty(number(one, "course"), "ft");
    const ours = timeFor({ distance: course, speed: qty(1, "mph") }).value;
    return [{ key: "mph_times_seconds", ours, within: 0.5, right: 300 / (5280 / 3600) }];
  });

  agrees("const_0.68", () => [
    { key: "k", ours: speedFrom({ distance: qty(1, "ft"), time: qty(1, "s") }).value, within: 0.005 },
  ]);

  const overCourse = (one: HandbookCase): number =>
    speedFrom({ distance: qty(number(one, "course"), "ft"), time: qty(number(one, "time"), "s") }).value;
  agrees("speed_ok_45s", (one) => [{ key: "speed", ours: overCourse(one), within: 0.5 }]);
  agrees("speed_ok_27s", (one) => [{ key: "speed", ours: overCourse(one), within: 0.5 }]);

  publicationErrs(
    "gpa_ok_101oz",
    "5,940 × 0.79 / (3 × 18) is 86.9: no rounding of the figures shown gives 88",
    (one) => [
      {
        key: "rate",
        ours: rateIn(number(one, "flow"), number(one, "speed"), number(one, "spacing"), "in"),
        within: 0.5,
        right: (5940 * 0.79) / (3 * 18),
      },
    ],
  );

  agrees("mt_speed_needed", (one) => {
    const { speed } = solveOutput({
      rate: qty(number(one, "target"), "gal/ac"),
      flow: qty(number(one, "flow"), "gal/min"),
      width: qty(number(one, "swath"), "in"),
    });
    return [{ key: "speed", ours: speed.value, within: 0.05 }];
  });

  agrees("mt_flow_needed", (one) => {
    const { flow } = solveOutput({
      rate: qty(number(one, "target"), "gal/ac"),
      speed: qty(number(one, "speed"), "mph"),
      width: qty(number(one, "spacing"), "in"),
    });
    return [{ key: "flow", ours: flow.value, within: 0.5 }];
  });

  publicationErrs("fl_flow_20oz", "20 fl oz a minute is 0.15625 gal, cut to 0.15: 4% low", (one) => [
    {
      key: "flow",
      ours: valueIn(qty(number(one, "catch"), "fl_oz/min"), "gal/min"),
      within: 0.005,
      right: 20 / 128,
    },
  ]);

  publicationErrs(
    "fl_gpa_method1",
    "the speed must be 88 ft/min for each mph; the worked line divides by 5 instead of 440, 88 times too high",
    (one) => [
      {
        key: "rate",
        ours: rateIn(number(one, "flow"), number(one, "speed"), number(one, "spacing"), "in"),
        within: 0.5,
        right: (5940 * 0.15) / (5 * 48),
      },
    ],
  );

  for (const { id, agrees: right } of (cases as unknown as HandbookCase[]).filter((one) =>
    one.id.startsWith("speedtab_"),
  )) {
    const checks = (one: HandbookCase) => {
      const speed = number(one, "speed");
      return list(one, "courses").map((course) => ({
        key: `t${course}`,
        ours: timeFor({ distance: qty(course, "ft"), speed: qty(speed, "mph") }).value,
        within: 0.5,
        right: course / ((speed * 5280) / 3600),
      }));
    };
    if (right) agrees(id, checks);
    else publicationErrs(id, "some of the seconds are rounded the wrong way", checks);
  }

  agrees("metric_irri", (one) => {
    const rate = catchRate({
      catches: [qty(number(one, "flow"), "L")],
      time: qty(1, "min"),
      speed: { distance: qty(100, "m"), time: qty(number(one, "time_100m"), "s") },
      width: qty(number(one, "width"), "m"),
    });
    return [{ key: "rate", ours: rate.value, within: 1e-9 }];
  });

  const metricTime = (one: HandbookCase): number =>
    timeFor({ distance: qty(number(one, "course"), "m"), speed: qty(number(one, "speed"), "km/h") }).value;
  publicationErrs("metric_alberta_800m_7", "800 m at 7 km/h take 6:51, not the 6:48 printed", (one) => [
    { key: "time", ours: metricTime(one), within: 0.5, right: 800 / (7 / 3.6) },
  ]);
  agrees("metric_alberta_800m_10", (one) => [{ key: "time", ours: metricTime(one), within: 0.5 }]);

  // The spacing is assumed and the flow the middle of a printed band, so this one is no independent check.
  agrees("metric_alberta_rate", () => {
    const { rate } = solveOutput({
      flow: qty(0.75, "L/min"),
      speed: qty(9, "km/h"),
      width: qty(0.5, "m"),
    });
    return [{ key: "rate", ours: convert(rate, "L/ac").value, within: 0.5 }];
  });

  publicationErrs("mph_units_unl", "1.4667 ft/s is cut to 1.46", (one) => {
    const speed = qty(number(one, "speed"), "mph");
    return [
      { key: "fpm", ours: valueIn(speed, "ft/min"), within: 0, right: 88 },
      { key: "fps", ours: valueIn(speed, "ft/s"), within: 0.005, right: 5280 / 3600 },
    ];
  });
});
