import { catchRate, catchRateWorking } from "../../output-rate/catch.js";
import { stripRate, stripRateWorking } from "../../output-rate/strip.js";
import { convert } from "../../units/convert.js";
import { scale } from "../../units/quantity.js";
import type { Length, Quantity, Unit, UnitSystem, Volume, VolumeRate } from "../../units/types.js";
import type { Draw, DrawnProblem, Slip } from "./drawn-problem.js";
import { USUAL_SIZES, type UsualSizes } from "./usual-sizes.js";

/** A strip with what was used on it, as the topics `strip-calibration` and `whole-job` give it. */
export interface DrawnStrip {
  readonly used: Volume;
  readonly swath: Length;
  readonly distance: Length;
}

/** Draws a strip on which a sprayer of a usual rate was tried. What was used is read to the whole ounce or to 10 mL. */
export function drawStrip(draw: Draw, usual: UsualSizes, swath: Length): DrawnStrip {
  const distance = { value: draw.step(...usual.strip), unit: usual.length };
  const rate = { value: draw.step(...usual.rates), unit: `${usual.volume}/${usual.land}` as const };
  const area = convert(swath, usual.length).value * distance.value;
  const exact = convert(rate, `${usual.small}/${usual.area}` as const).value * area;
  return { used: read(exact, usual), swath, distance };
}

function read(exact: number, { small }: UsualSizes): Volume {
  const mark = small === "mL" ? 10 : 1;
  return { value: Math.max(1, Math.round(exact / mark)) * mark, unit: small };
}

/** Topic `strip-calibration`: the rate from a test strip. */
export function drawStripCalibration(draw: Draw, units: UnitSystem): DrawnProblem {
  const usual = USUAL_SIZES[units];
  const given = drawStrip(draw, usual, { value: draw.step(...usual.bands), unit: usual.width });
  const lines = stripRateWorking(given);
  const { value } = stripRate(given);
  const answer = { value, unit: usual.rate };
  const { swath } = given;
  return {
    kind: "strip-calibration",
    given: { ...given },
    answer,
    working: lines,
    slips: [
      inverted(answer),
      smallAsLarge(answer, usual),
      {
        mistake: "width-in-small-unit",
        answer: scale(answer, convert(swath, usual.length).value / swath.value),
      },
      { mistake: "width-left-out", answer: scale(answer, convert(swath, usual.length).value) },
    ],
  };
}

function inverted(answer: VolumeRate): Slip {
  return { mistake: "inverted-ratio", answer: { value: 1 / answer.value, unit: answer.unit } };
}

function smallAsLarge(answer: Quantity, { small, volume }: UsualSizes): Slip {
  const many = convert({ value: 1, unit: volume }, small).value;
  return { mistake: "small-unit-as-large", answer: scale(answer, many) };
}

// Liters a second: 4 L/min, common practice, no source.
const MOST_FLOW = 4 / 60;

/** Topic `catch-calibration`: the rate from what one nozzle gives. */
export function drawCatchCalibration(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const usual = USUAL_SIZES[units];
  const time = { value: draw.pick([30, 40, 45]), unit: "s" } as const;
  const speed = { value: draw.step(...usual.speeds), unit: usual.speed };
  const width = { value: draw.pick(usual.nozzles), unit: usual.width };
  const rate = { value: draw.step(...usual.rates), unit: `${usual.volume}/${usual.land}` as const };
  const seconds = convert(speed, `${usual.length}/s` as Unit as "ft/s").value * time.value;
  const area = seconds * convert(width, usual.length).value;
  const caught = read(convert(rate, `${usual.small}/${usual.area}` as const).value * area, usual);
  // No nozzle of such a sprayer gives more.
  if (convert(caught, "L").value / time.value > MOST_FLOW) return undefined;
  const input = { catches: [caught], time, speed, width };
  const answer = { value: (catchRate(input) as VolumeRate).value, unit: usual.rate };
  return {
    kind: "catch-calibration",
    given: { caught, time, speed, width },
    answer,
    working: catchRateWorking(input),
    slips: [
      inverted(answer),
      { mistake: "seconds-as-minute", answer: scale(answer, time.value / 60) },
      {
        mistake: "width-in-small-unit",
        answer: scale(answer, convert(width, usual.length).value / width.value),
      },
    ],
  };
}
