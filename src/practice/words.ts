import type { MistakeCode, ProblemKind } from "./topics/drawn-problem.js";

/** The wording of the problems. */
export const ENGLISH_PROBLEMS: Readonly<Record<ProblemKind, string>> = {
  "area-rectangle": "A plot is a rectangle, {length} long and {width} wide. What is its area ({unit})?",
  "area-triangle":
    "A plot is a triangle. Its base is {base}, and the height on that base is {height}. What is its area ({unit})?",
  "area-trapezoid":
    "A plot has two parallel sides, {base} and {top}, which lie {height} apart. What is its area ({unit})?",
  "strip-calibration":
    "On a test strip of {distance}, sprayed {swath} wide, the sprayer used {used} of water. What does it put out ({unit})?",
  "catch-calibration":
    "One nozzle of a boom gives {caught} of water in {time}. The nozzles are {width} apart, and the sprayer travels at {speed}. What does it put out ({unit})?",
  "tank-loads":
    "On a field of {ground}, {area} are sprayed. The sprayer puts out {rate}, and its tank is filled to {fill}. How many loads does the job take?",
  "product-per-tank":
    "The label's rate is {rate}. The sprayer puts out {carrierRate}, and its tank holds {fill}. The product weighs {density}. How much product goes into a full tank ({unit})?",
  "household-measure":
    "A tank load takes {amount} of product. How many whole level spoons of {spoon} each can go in without going over?",
  band: "{rows} rows, each {rowLength} long and {rowSpacing} apart, get a band of {bandWidth} each. The label's rate is {rate} of treated area. How much product do all rows take ({unit})?",
  "percent-mix":
    "The label asks for {percent} of an additive in the mix. How much of it goes into a tank of {fill} ({unit})?",
  dilution:
    "A cleaner for sprayers is sold at a strength of {from}. Wanted are {volume} at {to}. How much of the cleaner is made up with water ({unit})?",
  "whole-job":
    "{rows} rows, each {rowLength} long and {rowSpacing} apart, are sprayed in bands of {bandWidth}. On a test strip of {distance}, in the same band, the sprayer used {used} of water. The tank is filled to {fill}, and full tanks are mixed as long as they are needed, then the rest. The label's rate is {rate} of treated area. How much product goes into the last load ({unit})?",
};

/** What each wrong answer shows. */
export const ENGLISH_MISTAKES: Readonly<Record<MistakeCode, string>> = {
  "sides-added": "Length and width were added and not multiplied.",
  "not-halved": "The half was forgotten: this is the rectangle around it.",
  "long-side-only": "Only the longer of the two parallel sides was counted.",
  "wrong-land-unit": "The area was divided by the wrong number to come to the larger unit of land.",
  "inverted-ratio": "The ratio was turned upside down.",
  "small-unit-as-large": "The amount was read in the small unit and used as if it were the large one.",
  "width-in-small-unit": "The width was used as it was read, and not in the unit of the distance.",
  "width-left-out": "The width of the strip was left out.",
  "seconds-as-minute": "The catch was taken as that of a whole minute.",
  "rounded-down": "The part load was left out: some of the plot would get no spray.",
  "rounded-up": "The last spoon was rounded up: that is over the amount.",
  "ground-area": "The whole field was counted and not only what is sprayed.",
  "ground-for-treated":
    "The ground between the bands was counted as well: product for ground that gets none.",
  "one-row-too-few": "The gaps between the rows were counted and not the rows.",
  "unscaled-product": "The amount for one unit of area was put into each tank, whatever the tank treats.",
  "weighed-as-volume": "The amount by volume was weighed: a measure of volume is not one of weight.",
  "large-spoon": "The spoons were counted as if each held three times as much.",
  "percent-as-part": "The percent was not divided by 100.",
  "per-mille": "The percent was divided by 1,000.",
  "parts-of-water": "The strength was taken as parts to the water, and not in all of the mix.",
  "took-the-water": "This is the water that it is made up with.",
  "full-tank-dose": "The last load got the product of a full tank: it is too strong.",
};
