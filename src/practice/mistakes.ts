/** A mistake in words. Places such as `{small.unit}` are filled with the units and factors of the problem's system. */
export interface MistakeWords {
  /** What happened. */
  readonly what: string;
  /** How to see that something is wrong. */
  readonly see: string;
  /** How to mend it. */
  readonly mend: string;
}

/** Which mistake a wrong answer shows. */
export type MistakeCode =
  | "sides-added"
  | "base-and-height-added"
  | "perimeter-taken"
  | "halved"
  | "not-halved"
  | "halved-twice"
  | "mean-not-taken"
  | "long-side-only"
  | "short-side-only"
  | "all-multiplied"
  | "land-unit-left"
  | "wrong-land-factor"
  | "land-factor-inverted"
  | "other-land-unit"
  | "land-unit-from-other"
  | "inverted"
  | "fraction-inverted"
  | "rate-inverted"
  | "multiplied"
  | "divided-by-area"
  | "small-unit-as-large"
  | "volume-factor-inverted"
  | "volume-unit-left"
  | "label-unit-left"
  | "other-gallon"
  | "pint-for-gallon"
  | "pint-of-8"
  | "pint-of-other-system"
  | "pint-of-32"
  | "liter-of-100"
  | "width-in-small-unit"
  | "width-left-out"
  | "width-in-large-unit"
  | "factors-left-out"
  | "time-taken-as-minute"
  | "seconds-as-minutes"
  | "speed-in-other-unit"
  | "rounded-down"
  | "loads-unrounded"
  | "ground-for-area"
  | "area-left-out"
  | "total-for-count"
  | "unscaled-product"
  | "unscaled-tank"
  | "unscaled-reserve"
  | "unscaled-last-load"
  | "rate-per-volume"
  | "per-lawn-for-land"
  | "rate-per-other-land"
  | "weighed-as-volume"
  | "weighed-as-water"
  | "weight-for-volume"
  | "rounded-early"
  | "dose-rounded-up"
  | "rounded-up"
  | "spoons-unrounded"
  | "tablespoon-for-teaspoon"
  | "teaspoon-for-tablespoon"
  | "ground-for-treated"
  | "ground-for-treated-loads"
  | "one-row-too-few"
  | "one-row-only"
  | "length-and-spacing"
  | "percent-as-part"
  | "final-percent-only"
  | "per-mille"
  | "one-unit-only"
  | "parts-of-water"
  | "took-the-water"
  | "strength-ignored"
  | "strengths-subtracted"
  | "strengths-swapped"
  | "full-tank-dose"
  | "all-in-last-load"
  | "equal-loads"
  | "per-second-left"
  | "speed-factor-inverted"
  | "speed-inverted"
  | "per-minute-left"
  | "other-speed-unit"
  | "land-for-lawn"
  | "lawn-size-left-out"
  | "unscaled-lawn"
  | "lawn-ten-times"
  | "small-mass-for-large"
  | "pounds-as-kilograms"
  | "mass-unit-left"
  | "pound-of-12"
  | "weighed-by-water"
  | "one-spot-only"
  | "added-on-top"
  | "mix-for-product"
  | "area-for-product"
  | "reserve-without-product"
  | "product-for-reserve-only"
  | "reserve-subtracted"
  | "applied-ignored"
  | "limit-passed"
  | "limit-unrounded"
  | "one-application-subtracted"
  | "rate-left-for-count"
  | "catch-unscaled"
  | "times-upside-down"
  | "catch-per-minute"
  | "reading-divided"
  | "reading-multiplied"
  | "boom-on-one-width"
  | "one-nozzle-for-boom"
  | "average-for-boom"
  | "nozzles-squared"
  | "difference-as-percent"
  | "off-itself"
  | "off-the-others"
  | "share-of-average"
  | "spread-taken"
  | "off-the-lowest"
  | "part-not-percent"
  | "ratio-ignored"
  | "per-hundred-left-out"
  | "one-unit-of-stock"
  | "ratio-inverted"
  | "rate-per-unit-of-stock"
  | "order-as-listed"
  | "order-reversed"
  | "adjuvant-first"
  | "liquids-before-powders"
  | "conditioner-last"
  | "powders-swapped"
  | "decimal-point"
  | "nutrient-for-product"
  | "content-multiplied"
  | "row-size-left-out"
  | "unscaled-row"
  | "row-ten-times"
  | "divided-by-rows"
  | "canopy-size-left-out"
  | "alleys-as-canopy"
  | "canopy-for-spray"
  | "canopy-height-left-out"
  | "canopy-width-left-out"
  | "rows-counted-twice"
  | "spacing-multiplied"
  | "volumes-in-two-units"
  | "minutes-for-seconds"
  | "flow-multiplied"
  | "time-of-catch"
  | "plants-from-catch"
  | "other-kind-of-unit"
  | "right-number"
  | "number-in-other-unit"
  | "first-nozzle-only"
  | "boom-one-spacing-short"
  | "step-for-answer";

// The label decides: said wherever the order is taught.
const MIXING_RULE =
  "Unless the label says otherwise: conditioner first, then wettable powders, granules, suspensions, emulsions, and adjuvants last.";

const FOR_ONE = "This is the product for {oneLand}, not for what is really covered.";
const COVERS_OTHER = "Check what the mix covers: it is not {oneLand}.";
const FOR_LAST_LOAD = "Multiply the product per {oneVolume.unit} of mix by the mix in the last load.";
const CANOPY_SUM = "Multiply height by width, and divide by the row spacing.";
const TIME_SUM = "Multiply the volume for a plant by the time of the catch, and divide by the amount caught.";

const words = (what: string, see: string, mend: string): MistakeWords => ({ what, see, mend });

/** The mistakes of all topics in English, by the code that they have in every language. */
export const ENGLISH_MISTAKES: Readonly<Record<MistakeCode, MistakeWords>> = {
  "sides-added": words(
    "Length and width were added instead of multiplied.",
    "A sum of lengths is a length. An area is measured in squares.",
    "Multiply the two sides.",
  ),
  "base-and-height-added": words(
    "Base and height were added instead of multiplied.",
    "A sum of lengths is a length. An area is measured in squares.",
    "Multiply base by height and divide by 2.",
  ),
  "perimeter-taken": words(
    "This is the distance around the plot, not its area.",
    "Walking around a plot covers no ground inside it.",
    "Multiply length by width.",
  ),
  halved: words(
    "The area was cut in half, as for a triangle.",
    "Sketch the plot. All of the rectangle belongs to it.",
    "Do not divide by 2: a rectangle is length times width.",
  ),
  "not-halved": words(
    "The half was forgotten: this is the rectangle around the triangle.",
    "Sketch the plot inside a rectangle. It fills half of it.",
    "Divide base times height by 2.",
  ),
  "halved-twice": words(
    "The area was divided by 2 twice.",
    "Sketch the plot inside a rectangle. It fills half of it, not a quarter.",
    "Divide base times height by 2 once.",
  ),
  "mean-not-taken": words(
    "The two parallel sides were added but not averaged.",
    "The plot would be larger than a rectangle on its longer side.",
    "Add the two parallel sides and divide by 2 before you multiply.",
  ),
  "long-side-only": words(
    "Only the longer of the two parallel sides was used.",
    "Sketch the rectangle on the longer side. The plot does not fill it.",
    "Use the average of the two parallel sides.",
  ),
  "short-side-only": words(
    "Only the shorter of the two parallel sides was used.",
    "Sketch the rectangle on the shorter side. The plot sticks out of it.",
    "Use the average of the two parallel sides.",
  ),
  "all-multiplied": words(
    "All three lengths were multiplied.",
    "Three lengths multiplied make a volume, not an area.",
    "Multiply the average of the parallel sides by the distance between them.",
  ),
  "land-unit-left": words(
    "The area was left in {area.unit}.",
    "The number is off by a factor of {perLand}.",
    "There are {perLand} {area.unit} in {oneLand}. Change the unit.",
  ),
  "wrong-land-factor": words(
    "The wrong number was used to change {area.unit} to {land.unit}.",
    "Check the plot against one you know.",
    "There are {perLand} {area.unit} in {oneLand}.",
  ),
  "land-factor-inverted": words(
    "The factor between {area.unit} and {land.unit} was used the wrong way around.",
    "{oneLand} is a lot of land, so a plot is only a part of that, or a few times as much.",
    "Divide {area.unit} by {perLand} to get {land.unit}.",
  ),
  "other-land-unit": words(
    "This answer uses {otherLand.unit}, not {land.unit}.",
    "{hectare} is about {acres}.",
    "Use {perLand} {area.unit} for {oneLand}.",
  ),
  "land-unit-from-other": words(
    "The area in {area.unit} was divided by the number that belongs to another unit of land.",
    "Write the units next to the numbers. They do not cancel.",
    "Divide {area.unit} by {perLand} to get {land.unit}.",
  ),
  inverted: words(
    "One step was multiplied instead of divided, or divided instead of multiplied.",
    "The number is far from an estimate in round numbers.",
    "Write the units next to the numbers. Only the unit of the answer may be left.",
  ),
  "fraction-inverted": words(
    "The fraction was turned upside down.",
    "The number is far from an estimate in round numbers.",
    "Swap the two numbers of the division.",
  ),
  "rate-inverted": words(
    "The fraction was turned upside down.",
    "Write the units next to the numbers. They come out upside down too.",
    "Put the volume on top and the area below.",
  ),
  multiplied: words(
    "The amount was multiplied by the area instead of divided by it.",
    "Using the same amount on a longer strip must give a lower rate.",
    "A rate is an amount per area: divide.",
  ),
  "divided-by-area": words(
    "The rate was divided by the area instead of multiplied by it.",
    "A larger area must take more product.",
    "Multiply the rate by the area.",
  ),
  "small-unit-as-large": words(
    "The amount in {small.unit} was used as if it were {volume.unit}.",
    "The rate is {perVolume} times too high: nobody sprays that much.",
    "Divide by {perVolume} to change {small.unit} to {volume.unit}.",
  ),
  "volume-factor-inverted": words(
    "The amount in {small.unit} was multiplied by {perVolume} instead of divided.",
    "The number got larger, but {oneVolume} is more than {oneSmall}: it must get smaller.",
    "Divide by {perVolume} to change {small.unit} to {volume.unit}.",
  ),
  "volume-unit-left": words(
    "The amount was left in {volume.unit}.",
    "The number is {perVolume} times too small.",
    "Multiply by {perVolume} to change {volume.unit} to {small.unit}.",
  ),
  "label-unit-left": words(
    "The amount was left in {label.unit}, the unit of the rate.",
    "The question asks for {small.unit}.",
    "Multiply by {perLabel}: {oneLabel} is {perLabel} {small.unit}.",
  ),
  "other-gallon": words(
    "The gallon of the other system was used: a US gallon has 128 fluid ounces, an imperial gallon 160.",
    "The answer is a quarter too large, or a fifth too small.",
    "Use {perVolume} {small.unit} for {oneVolume}.",
  ),
  "pint-for-gallon": words(
    "A gallon was taken as a pint.",
    "The amount is 8 times too small.",
    "Use {perVolume} {small.unit} for {oneVolume}.",
  ),
  "pint-of-8": words(
    "A pint was taken as 8 {small.unit}.",
    "8 US fl oz are a US cup, not a pint.",
    "Use {perLabel} {small.unit} for {oneLabel}.",
  ),
  "pint-of-other-system": words(
    "The pint of the other system was used: a US pint has 16 fluid ounces, an imperial pint 20.",
    "Pints and fluid ounces must be of one system.",
    "Use {perLabel} {small.unit} for {oneLabel}.",
  ),
  "pint-of-32": words(
    "A pint was taken as 32 {small.unit}.",
    "32 US fl oz are a US quart, not a pint.",
    "Use {perLabel} {small.unit} for {oneLabel}.",
  ),
  "liter-of-100": words(
    "A liter was taken as 100 mL.",
    "The amount is 10 times too small.",
    "Use {perLabel} {small.unit} for {oneLabel}.",
  ),
  "width-in-small-unit": words(
    "The width was not converted ({width.unit} to {length.unit}).",
    "The width is {perLength} times too large.",
    "Divide the width by {perLength} ({width.unit} to {length.unit}).",
  ),
  "width-left-out": words(
    "The width was left out.",
    "A wider strip sprayed with the same amount must give a lower rate.",
    "Multiply distance by width to get the area.",
  ),
  "width-in-large-unit": words(
    "The width was converted ({width.unit} to {length.unit}), and used in the formula with {widthFormula}.",
    "The rate is {perLength} times too high.",
    "The formula with {widthFormula} takes the width as given ({width.unit}), the working here takes it converted ({length.unit}). Do not mix the two.",
  ),
  "factors-left-out": words(
    "The factors between the units were left out.",
    "The rate is far too low for a sprayer.",
    "Change volume, time and area to the units of the question.",
  ),
  "time-taken-as-minute": words(
    "The time was taken as one minute.",
    "Look at the time: it was less or more than 60 seconds.",
    "Use the time that it really took.",
  ),
  "seconds-as-minutes": words(
    "Seconds were used as minutes.",
    "The answer is 60 times too low.",
    "Divide seconds by 60 to get minutes.",
  ),
  "speed-in-other-unit": words(
    "The speed in {speed.unit} was used as if it were {length.unit} per second.",
    "Walking pace is about {walking}: {walkingPerSecond} {length.unit} per second.",
    "Change the speed to {length.unit} per second first.",
  ),
  "rounded-down": words(
    "The part load was left out.",
    "Some of the plot would get no spray.",
    "Round up: the last load is a part load.",
  ),
  "loads-unrounded": words(
    "The number of loads was not rounded.",
    "A part load is also a load: you fill the tank once more.",
    "Round up to a whole number.",
  ),
  "ground-for-area": words(
    "The whole field was counted instead of only what is sprayed.",
    "Spray mix would be left over.",
    "Use the sprayed area.",
  ),
  "area-left-out": words(
    "The area was left out.",
    "A field twice as large must take twice the mix.",
    "Multiply the output rate by the area first.",
  ),
  "total-for-count": words(
    "This is the total mix, not the number of loads.",
    "The question asks for the number of loads.",
    "Divide the total mix by what the tank is filled to, and round up.",
  ),
  "unscaled-product": words(
    FOR_ONE,
    "Check how large the sprayed area is: it is not {oneLand}.",
    "Multiply the rate by the sprayed area.",
  ),
  "unscaled-tank": words(
    FOR_ONE,
    COVERS_OTHER,
    "Multiply the product per {oneVolume.unit} of mix by what the tank is filled to.",
  ),
  "unscaled-reserve": words(
    FOR_ONE,
    COVERS_OTHER,
    "Multiply the product per {oneVolume.unit} of mix by all of the mix, the extra too.",
  ),
  "unscaled-last-load": words(FOR_ONE, COVERS_OTHER, FOR_LAST_LOAD),
  "rate-per-volume": words(
    "The rate per {oneLand.unit} was used as a rate per {oneVolume.unit} of mix.",
    "The mix would be far too strong.",
    "Divide the label rate by the output rate first: that is the product per {oneVolume.unit} of mix.",
  ),
  "per-lawn-for-land": words(
    "The rate per {oneLand.unit} was used as a rate per {oneLawn.unit}.",
    "The dose is far too large.",
    "Read what the rate is per, and use that area.",
  ),
  "rate-per-other-land": words(
    "The rate was used as if it were per {oneOtherLand.unit}.",
    "{hectare} is about {acres}.",
    "The rate is per {oneLand.unit}. Keep it per {oneLand.unit}.",
  ),
  "weighed-as-volume": words(
    "The number of fluid ounces (mL) was weighed out as ounces (grams).",
    "A scale shows weight. The rate is a volume.",
    "Measure a liquid in a jug or a spoon, not on a scale.",
  ),
  "weighed-as-water": words(
    "The product was weighed out as if it were as heavy as water.",
    "Water weighs {water}. This product weighs something else.",
    "Measure a liquid by volume.",
  ),
  "weight-for-volume": words(
    "This is what the product weighs, not its volume.",
    "The question asks for a volume. What the product weighs is not needed.",
    "Do not use the weight.",
  ),
  "rounded-early": words(
    "A step in between was rounded, and the rest of the sum carried the error on.",
    "Work it again with all digits. The answer changes.",
    "Round once, at the end.",
  ),
  "dose-rounded-up": words(
    "The dose was rounded up: that is too much product.",
    "Compare it with the exact answer: it is more.",
    "Always round an amount of product down.",
  ),
  "rounded-up": words(
    "The last spoon was rounded up: that is over the amount.",
    "Turn the spoons back into the amount. It is too much.",
    "Round down. A part of a spoon stays out or is measured with a smaller one.",
  ),
  "spoons-unrounded": words(
    "The number of spoons was not rounded.",
    "Nobody can measure such a part of a spoon.",
    "Round down to whole level spoons.",
  ),
  "tablespoon-for-teaspoon": words(
    "The spoons were counted as tablespoons.",
    "A tablespoon holds 3 teaspoons, so fewer of them go in.",
    "Check which spoon the question gives.",
  ),
  "teaspoon-for-tablespoon": words(
    "The spoons were counted as teaspoons.",
    "With tablespoons this would be about 3 times the dose.",
    "Check which spoon the question gives.",
  ),
  "ground-for-treated": words(
    "The ground between the bands was counted as well.",
    "Product would go on ground that gets no spray.",
    "Use the band width, not the row spacing.",
  ),
  "ground-for-treated-loads": words(
    "The ground between the bands was counted as well. That changes how many loads there are and how large the last one is.",
    "The job would take more mix than the rows need.",
    "Use the band width, not the row spacing, for the area.",
  ),
  "one-row-too-few": words(
    "The gaps between the rows were counted instead of the rows.",
    "Sketch the rows: there is one more row than gaps.",
    "Count the rows.",
  ),
  "one-row-only": words(
    "Only one row was counted.",
    "The amount would not reach past the first row.",
    "Multiply by the number of rows.",
  ),
  "length-and-spacing": words(
    "The row spacing was used instead of the row length.",
    "The area is far too small.",
    "Multiply row length by band width.",
  ),
  "percent-as-part": words(
    "The percent was not divided by 100.",
    "The amount is 100 times too large.",
    "{onePercent} is 1 part in 100: divide by 100.",
  ),
  "final-percent-only": words(
    "The final percent was not divided by 100, and the strength was left out.",
    "The number is far from an estimate in round numbers.",
    "Divide the final percent by the percent of the concentrate.",
  ),
  "per-mille": words(
    "The percent was divided by {thousand}.",
    "The amount is 10 times too small.",
    "{onePercent} is 1 part in 100: divide by 100.",
  ),
  "one-unit-only": words(
    "This is the amount for {oneVolume} of mix only.",
    "The tank holds more than {oneVolume}.",
    "Multiply by what the tank is filled to.",
  ),
  "parts-of-water": words(
    "The concentrate was taken in proportion to the water, not to the whole mix.",
    "The mix would be too weak.",
    "Divide the final strength by the strength of the concentrate: that is its part of the whole mix.",
  ),
  "took-the-water": words(
    "This is the water that is added.",
    "The question asks for what goes into the water.",
    "Subtract the water from the finished mix.",
  ),
  "strength-ignored": words(
    "The strength of the concentrate was ignored, as if it were pure.",
    "The mix would be too weak.",
    "Divide by the strength of the concentrate.",
  ),
  "strengths-subtracted": words(
    "The difference of the strengths was used instead of the strength to make.",
    "Mix it in your head: the strength does not come out.",
    "Divide the strength to make by the strength of the concentrate.",
  ),
  "strengths-swapped": words(
    "The two strengths were used the wrong way around.",
    "This is more than the whole mix.",
    "Divide the strength to make by the strength of the concentrate.",
  ),
  "full-tank-dose": words(
    "The last load got the product of a full tank.",
    "The last load is smaller, so the mix would be too strong.",
    FOR_LAST_LOAD,
  ),
  "all-in-last-load": words(
    "This is the product for the whole job.",
    "The full tanks need product too.",
    FOR_LAST_LOAD,
  ),
  "equal-loads": words(
    "The product was split evenly over the loads.",
    "The loads are not equal: the last one is what is left.",
    "Take the full tanks off first, then work out the last load.",
  ),
  "per-second-left": words(
    "The speed was left in {length.unit} per second.",
    "The question asks for {speed.unit}.",
    "Change the unit: {oneSpeed} is about {perSecond} {length.unit} per second.",
  ),
  "speed-factor-inverted": words(
    "The factor between the two units of speed was used upside down.",
    "Compare it with walking pace, about {walking}.",
    "{oneSpeed} is about {perSecond} {length.unit} per second.",
  ),
  "speed-inverted": words(
    "The time was divided by the distance.",
    "The units come out as a time per distance.",
    "Divide the distance by the time.",
  ),
  "per-minute-left": words(
    "The speed was left in {length.unit} per minute.",
    "Nobody sprays at such a speed.",
    "{oneSpeed} is about {perMinute} {length.unit} per minute.",
  ),
  "other-speed-unit": words(
    "The speed is in the other system's unit.",
    "1 mile is about {mile}.",
    "Read in the question what unit is asked for.",
  ),
  "land-for-lawn": words(
    "The rate per {oneLawn.unit} was used as a rate per {oneLand.unit}.",
    "The dose is far too small.",
    "Read what the rate is per, and use that area.",
  ),
  "nutrient-for-product": words(
    "This is the weight of the nutrient, not of the fertilizer.",
    "Only a part of the bag is the nutrient, so more of the fertilizer is needed.",
    "Divide the nutrient by the percentage on the bag.",
  ),
  "content-multiplied": words(
    "The nutrient was multiplied by the percentage on the bag, not divided by it.",
    "The fertilizer can't weigh less than the nutrient in it.",
    "Divide the nutrient by the percentage on the bag.",
  ),
  "row-size-left-out": words(
    "The rate was used as if it were per {oneLength} of row.",
    "The dose is far too large.",
    "The rate is per {oneRow.unit}: divide the length of row by that.",
  ),
  "unscaled-row": words(
    "This is the amount for {oneRow.unit} of row, not for all rows.",
    "Compare the length of all rows with {oneRow.unit}.",
    "Divide the length of all rows by {oneRow.unit}, and multiply by the rate.",
  ),
  "row-ten-times": words(
    "The rate was used as if it were per {tenthOfRow} of row.",
    "The dose is 10 times too large.",
    "The rate is per {oneRow.unit} of row.",
  ),
  "divided-by-rows": words(
    "The rate was divided by the length of row, not multiplied by it.",
    "Longer rows must take more product.",
    "Divide the length of all rows by {oneRow.unit}, and multiply by the rate.",
  ),
  "lawn-size-left-out": words(
    "The rate was used as if it were per {oneArea}.",
    "The dose is far too large.",
    "The rate is per {oneLawn.unit}: divide the area by that.",
  ),
  "unscaled-lawn": words(
    "This is the amount for {oneLawn.unit}, not for the plot.",
    "Compare the plot with {oneLawn.unit}.",
    "Divide the area by {oneLawn.unit}, and multiply this amount by the result.",
  ),
  "lawn-ten-times": words(
    "The rate was used as if it were per {tenthOfLawn}.",
    "The dose is 10 times too large.",
    "The rate is per {oneLawn.unit}.",
  ),
  "small-mass-for-large": words(
    "The amount was changed to the smaller unit of weight.",
    "The question asks for {mass.unit}.",
    "Leave the amount in {mass.unit}.",
  ),
  "pounds-as-kilograms": words(
    "The amount is in kilograms, not pounds.",
    "1 lb is about {pound}.",
    "Read in the question what unit is asked for.",
  ),
  "mass-unit-left": words(
    "The amount was left in {mass.unit}.",
    "The question asks for {smallMass.unit}.",
    "{oneMass} is {perMass} {smallMass.unit}.",
  ),
  "pound-of-12": words("A pound was taken as 12 ounces.", "The amount is too small.", "1 lb is 16 oz wt."),
  "weighed-by-water": words(
    "The weight was changed to fluid ounces, as if the product were water.",
    "A powder is not as heavy as water, and the question asks for a weight.",
    "Weigh a dry product on a scale.",
  ),
  "one-spot-only": words(
    "This is the product for one spot only.",
    "There is more than one spot.",
    "Multiply by the number of spots.",
  ),
  "added-on-top": words(
    "The percentage was taken of the mix with the product on top.",
    "The amount comes out too large.",
    "Take the percentage of the finished mix.",
  ),
  "area-for-product": words(
    "This is the area that is covered, not the product.",
    "The question asks for product.",
    "Multiply the area by the rate.",
  ),
  "mix-for-product": words(
    "This is the mix, not the product in it.",
    "The question asks for product.",
    "Multiply the mix by its strength: the product in {oneVolume} of it.",
  ),
  "reserve-without-product": words(
    "The extra water got no product.",
    "The whole mix would be too weak.",
    "Work out the product for all of the mix, the extra too.",
  ),
  "product-for-reserve-only": words(
    "This is the product for the extra mix only.",
    "The plot needs product too.",
    "Work out the product for all of the mix.",
  ),
  "reserve-subtracted": words(
    "The extra was subtracted instead of added.",
    "The mix would not reach to the end of the plot.",
    "Add the extra to what the plot takes.",
  ),
  "applied-ignored": words(
    "What was applied already was left out.",
    "Add up the season: it would go over the limit.",
    "Subtract what was applied from the limit first.",
  ),
  "limit-passed": words(
    "The last application was rounded up: that is over the season's limit.",
    "Add up the season: it goes over the limit.",
    "Round down.",
  ),
  "limit-unrounded": words(
    "The number of applications was not rounded.",
    "You can't make a part of an application.",
    "Round down to a whole number.",
  ),
  "one-application-subtracted": words(
    "Only one application was subtracted.",
    "Count in the record how many there were.",
    "Multiply the rate by the number of applications, and subtract that.",
  ),
  "rate-left-for-count": words(
    "This is how much may still be applied, not how many times.",
    "The question asks for a number of applications.",
    "Divide by the rate, and round down.",
  ),
  "catch-unscaled": words(
    "The catch was read as it was, but the catch and the strip took different times.",
    "Compare the two times.",
    "Multiply the catch by the time for the strip, and divide by the time of the catch.",
  ),
  "times-upside-down": words(
    "The two times were used the wrong way around.",
    "Taking longer over the strip must give a higher rate.",
    "Multiply by the time for the strip, and divide by the time of the catch.",
  ),
  "catch-per-minute": words(
    "The catch of a whole minute was used.",
    "The strip does not take a minute.",
    "Use the catch for the time that the strip takes.",
  ),
  "reading-divided": words(
    "The catch was divided by {perVolume}.",
    "The strip is as long as it is so that nothing has to be converted.",
    "Read the catch in the strip's own time as the rate.",
  ),
  "reading-multiplied": words(
    "The catch was multiplied by {perVolume}.",
    "The strip is as long as it is so that nothing has to be converted.",
    "Read the catch in the strip's own time as the rate.",
  ),
  "boom-on-one-width": words(
    "The catch of all nozzles was used with the width of one.",
    "All nozzles together cover the whole boom.",
    "Divide by the number of nozzles, or use the width of the boom.",
  ),
  "one-nozzle-for-boom": words(
    "The catch of one nozzle was used with the width of the boom.",
    "One nozzle covers only its own width.",
    "Use the total of all nozzles, or the width of one.",
  ),
  "average-for-boom": words(
    "The average catch of one nozzle was used with the width of the boom.",
    "One nozzle covers only its own width.",
    "Use the average catch with the width of one nozzle.",
  ),
  "nozzles-squared": words(
    "The catch was multiplied by the number of nozzles twice.",
    "The rate is far too high.",
    "Count each nozzle once.",
  ),
  "difference-as-percent": words(
    "The difference was read as a percentage.",
    "The same difference is a larger part of a small catch than of a large one.",
    "Divide the difference by the average, and multiply by 100.",
  ),
  "off-itself": words(
    "The difference was divided by the nozzle's own catch.",
    "The question asks for a percentage of the average.",
    "Divide the difference by the average.",
  ),
  "off-the-others": words(
    "The nozzle was compared with the average of the others.",
    "The average of the question is that of all nozzles.",
    "Take the average of all nozzles.",
  ),
  "share-of-average": words(
    "This is the catch in percent of the average, not how far off it is.",
    "By that sum, a nozzle that gives the average would be {wholePercent} off.",
    "Subtract the average first.",
  ),
  "spread-taken": words(
    "This is the difference between the highest and the lowest nozzle.",
    "The question asks how far one nozzle is off the average.",
    "Subtract the average, not the other end.",
  ),
  "off-the-lowest": words(
    "The highest nozzle was compared with the lowest one.",
    "The question asks for a percentage of the average.",
    "Compare with the average.",
  ),
  "part-not-percent": words(
    "This is the decimal, not the percentage.",
    "The number is 100 times too small.",
    "Multiply by 100.",
  ),
  "ratio-ignored": words(
    "The ratio of the injector was left out.",
    "The plants would get far too little.",
    "Multiply the stock by the ratio to get the solution it makes.",
  ),
  "per-hundred-left-out": words(
    "The rate per 100 {volume.unit} was used as a rate per {oneVolume}.",
    "The dose is 100 times too large.",
    "Divide the solution by 100 first.",
  ),
  "one-unit-of-stock": words(
    "This is the product for {oneVolume} of stock.",
    "The question has another amount of stock.",
    "Multiply by that amount of stock.",
  ),
  "ratio-inverted": words(
    "The ratio was used upside down.",
    "The stock must be stronger than the solution.",
    "Multiply by the ratio.",
  ),
  "rate-per-unit-of-stock": words(
    "The rate per 100 {volume.unit} of solution was used as a rate per {oneVolume} of stock.",
    "That is right for an injector of 1:100 only.",
    "Work out how much solution the stock makes.",
  ),
  "order-as-listed": words(
    "The products were added as they were listed.",
    "The list is in no order.",
    MIXING_RULE,
  ),
  "order-reversed": words(
    "The order was reversed.",
    "What should go in last is in the water first, and the others may not mix with it.",
    MIXING_RULE,
  ),
  "adjuvant-first": words(
    "The adjuvant went in too early.",
    "It can foam while the others are mixed in.",
    "Adjuvants go in last, after the products.",
  ),
  "liquids-before-powders": words(
    "A liquid product went in too early.",
    "What should be in the water before it may not mix with it now.",
    "Powders first, then granules, suspensions, and emulsions.",
  ),
  "conditioner-last": words(
    "The water conditioner went in too late.",
    "The products are in the water before it can act.",
    "The conditioner goes in first, before the products.",
  ),
  "powders-swapped": words(
    "The granules went in before the wettable powder.",
    "A powder needs the most time to get wet.",
    "Wettable powder first, then water-dispersible granules.",
  ),
  "canopy-size-left-out": words(
    "The canopy was not divided by {oneCanopy.unit}.",
    "Nobody sprays that much.",
    "The spray is for {oneCanopy.unit} of canopy: divide by that first.",
  ),
  "alleys-as-canopy": words(
    "The alleys between the rows were counted as canopy.",
    "Sketch two rows: between them there are no leaves.",
    CANOPY_SUM,
  ),
  "canopy-for-spray": words(
    "This is the canopy, not the spray for it.",
    "The question asks for spray.",
    "Divide the canopy by {oneCanopy.unit}, and multiply by the spray.",
  ),
  "canopy-height-left-out": words(
    "The height of the trees was left out.",
    "Trees twice as high must take twice the spray.",
    CANOPY_SUM,
  ),
  "canopy-width-left-out": words(
    "The width of the trees was left out.",
    "Trees twice as wide must take twice the spray.",
    CANOPY_SUM,
  ),
  "rows-counted-twice": words(
    "Each row was counted twice, once from each side.",
    "A row has one canopy, whichever side it is sprayed from.",
    "Do not multiply by 2.",
  ),
  "spacing-multiplied": words(
    "The canopy was multiplied by the row spacing, not divided by it.",
    "Rows further apart must give less canopy.",
    CANOPY_SUM,
  ),
  "volumes-in-two-units": words(
    "One volume was left in {small.unit} and the other in {volume.unit}.",
    "The time is {perVolume} times too long.",
    "{oneVolume} is {perVolume} {small.unit}: change one of them first.",
  ),
  "minutes-for-seconds": words(
    "The answer was left in minutes.",
    "The question asks for seconds.",
    "Multiply minutes by 60 to get seconds.",
  ),
  "flow-multiplied": words(
    "The volume was multiplied by the flow instead of divided by it.",
    "A higher flow must take less time.",
    TIME_SUM,
  ),
  "time-of-catch": words("This is how long the catch took.", "A plant gets a different volume.", TIME_SUM),
  "plants-from-catch": words(
    "This is how many plants the catch is enough for.",
    "The question asks for seconds.",
    "Divide the time of the catch by that number.",
  ),
  "decimal-point": words(
    "The digits are right, but the decimal point is in the wrong place.",
    "The number is far from an estimate in round numbers.",
    "Work it again, and count the zeros and the decimals.",
  ),
  "other-kind-of-unit": words(
    "This unit does not fit the question.",
    "An amount is not a rate, a length is not an area, a weight is not a volume, and a count has no unit.",
    "Read in the question what unit is asked for.",
  ),
  "right-number": words(
    "The number is right, but the unit should be {asked.unit}.",
    "An answer is a number with its unit.",
    "Write the unit that the question asks for.",
  ),
  "number-in-other-unit": words(
    "The number is right in another unit, but not in {asked.unit}.",
    "Without a unit, a number is in the unit of the question.",
    "Write your unit with the number, or change it to {asked.unit}.",
  ),
  "first-nozzle-only": words(
    "Only the first nozzle was used, not the average of all.",
    "One nozzle can put out more or less than the others.",
    "Add the catches of all nozzles, and divide by the number of nozzles.",
  ),
  "boom-one-spacing-short": words(
    "The width of the boom was taken from the first nozzle to the last.",
    "The two outer nozzles each cover half a spacing more.",
    "Multiply the spacing by the number of nozzles.",
  ),
  "step-for-answer": words(
    "This is the result of an earlier step: {step}.",
    "The question asks for something else.",
    "Go on from this step to what the question asks for.",
  ),
};
