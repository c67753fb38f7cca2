import { catchRate, catchRateWorking } from "../../output-rate/catch.js";
import { stripRate, stripRateWorking } from "../../output-rate/strip.js";
import { convert } from "../../units/convert.js";
import { scale } from "../../units/quantity.js";
import type { Length, Quantity, Unit, UnitSystem, Volume, VolumeRate } from "../../units/types.js";
import type { Draw, DrawnProblem, Slip } from "./drawn-problem.js";
import { KITS, type Kit } from "./usual-sizes.js";

/** A strip with what was used on it, as the topics `strip-calibration` and `whole-job` give it. */
export interface DrawnStrip {
  readonly used: Volume;
  readonly swath: Length;
  readonly distance: Length;
}

/** Draws a strip on which a sprayer of a usual rate was tried. What was used is read to the whole ounce or to 10 mL. */
export function drawStrip(draw: Draw, kit: Kit, swath: Length): DrawnStrip {
  const distance = { value: draw.step(...kit.strip), unit: kit.length };
  const rate = { value: draw.step(...kit.rates), unit: `${kit.volume}/${kit.land}` as const };
  const area = convert(swath, kit.length).value * distance.value;
  const exact = convert(rate, `${kit.small}/${kit.area}` as const).value * area;
  return { used: read(exact, kit), swath, distance };
}

function read(exact: number, { small }: Kit): Volume {
  const mark = small === "mL" ? 10 : 1;
  return { value: Math.max(1, Math.round(exact / mark)) * mark, unit: small };
}

/** Topic `strip-calibration`: the rate from a test strip. */
export function drawStripCalibration(draw: Draw, units: UnitSystem): DrawnProblem {
  const kit = KITS[units];
  const given = drawStrip(draw, kit, { value: draw.step(...kit.bands), unit: kit.width });
  const lines = stripRateWorking(given);
  const { value } = stripRate(given);
  const answer = { value, unit: kit.rate };
  const { swath } = given;
  return {
    kind: "strip-calibration",
    given: { ...given },
    answer,
    working: lines,
    slips: [
      inverted(answer),
      smallAsLarge(answer, kit),
      {
        mistake: "width-in-small-unit",
        answer: scale(answer, convert(swath, kit.length).value / swath.value),
      },
      { mistake: "width-left-out", answer: scale(answer, convert(swath, kit.length).value) },
    ],
  };
}

function inverted(answer: VolumeRate): Slip {
  return { mistake: "inverted-ratio", answer: { value: 1 / answer.value, unit: answer.unit } };
}

function smallAsLarge(answer: Quantity, { small, volume }: Kit): Slip {
  const many = convert({ value: 1, unit: volume }, small).value;
  return { mistake: "small-unit-as-large", answer: scale(answer, many) };
}

// Liters a second: 4 L/min, common practice, no source.
const MOST_FLOW = 4 / 60;

/** Topic `catch-calibration`: the rate from what one nozzle gives. */
export function drawCatchCalibration(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const kit = KITS[units];
  const time = { value: draw.pick([30, 40, 45]), unit: "s" } as const;
  const speed = { value: draw.step(...kit.speeds), unit: kit.speed };
  const width = { value: draw.pick(kit.nozzles), unit: kit.width };
  const rate = { value: draw.step(...kit.rates), unit: `${kit.volume}/${kit.land}` as const };
  const seconds = convert(speed, `${kit.length}/s` as Unit as "ft/s").value * time.value;
  const area = seconds * convert(width, kit.length).value;
  const caught = read(convert(rate, `${kit.small}/${kit.area}` as const).value * area, kit);
  // No nozzle of such a sprayer gives more.
  if (convert(caught, "L").value / time.value > MOST_FLOW) return undefined;
  const input = { catches: [caught], time, speed, width };
  const answer = { value: (catchRate(input) as VolumeRate).value, unit: kit.rate };
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
        answer: scale(answer, convert(width, kit.length).value / width.value),
      },
    ],
  };
}
