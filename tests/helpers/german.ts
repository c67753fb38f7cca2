import { ENGLISH_WORDS, type Messages } from "../../src/worksheet/index.ts";
import { perNutrient } from "../../src/worksheet/words/line-table.ts";

// A third language, as the test that a table of words is all it takes. The compiler finds what is missing.
const GROUND = "Grundfläche";
const TREATED = "behandelte Fläche";
const PART = "behandelter Teil der Grundfläche";
const ROW_SPACING = "Reihenabstand";
const PLANT_SPACING = "Pflanzabstand";
const USED = "verbrauchte Menge";
const SWATH = "Breite der Bahn";
const DISTANCE = "Strecke";
const WIDTH = "Breite, die die Düsen treffen";
const SPEED = "Geschwindigkeit";
const ROW_LENGTH = "Länge der Reihe";
const PER_AREA = "Aufwand je Fläche";
const MIX = "Brühe im Ganzen";
const CONTENT = "Wirkstoff im Mittel";
const OUTPUT = "Ausbringmenge";
const WANTED = "gewünschte Menge";
const rows = { rows: "Zahl der Reihen", rowLength: ROW_LENGTH, x: "Länge von Reihe {n}" };
const beds = { beds: "Zahl der Beete", bedLength: "Länge des Beets", x: "Länge von Beet {n}" };
const strips = { stripWidth: "Breite des Streifens je Seite", sides: "behandelte Seiten je Reihe" };
const row = { used: USED, sides: "gespritzte Seiten", rowLength: ROW_LENGTH };
const NUTRIENTS = {
  N: "Stickstoff (N)",
  P2O5: "Phosphat (P2O5)",
  K2O: "Kali (K2O)",
  P: "Phosphor (P)",
  K: "Kalium (K)",
  S: "Schwefel (S)",
  SO3: "Schwefeltrioxid (SO3)",
  Mg: "Magnesium (Mg)",
  MgO: "Magnesiumoxid",
  Ca: "Calcium (Ca)",
  CaO: "Calciumoxid",
};
const part = (what: string) => ({
  found: `Beitrag zur Unsicherheit: ${what}`,
  terms: {
    w: "Gewicht von Ablesung {n}",
    u: `Unsicherheit von Ablesung {n} (${what})`,
    x: `${what}, Ablesung {n}`,
  },
});
const changed = (what: string) => ({
  found: `Faktor wegen: ${what}`,
  terms: { before: `${what} bei der Eichung`, now: `${what} jetzt` },
});
const flow = { flow: "Ausstoß", caught: "aufgefangene Menge", catchTime: "Auffangzeit" };
const injector = {
  product: "Mittel im Ganzen",
  stock: "Stammlösung",
  finished: "fertige Lösung",
  strength: "Stärke der Stammlösung",
  parts: "Teile Stammlösung",
  whole: "Teile fertige Lösung",
  water: "Teile Wasser",
  percent: "Fehler des Dosierers in Prozent",
  caught: "aufgefangene Menge",
  drawn: "gezogene Stammlösung",
};
const scatter = (what: string) => ({ x: what, mean: "Mittel", n: "Anzahl" });

/** Everything in German. */
export const GERMAN: Messages = {
  language: "de",
  lines: {
    "units.convert": {
      found: "dieselbe Menge in anderer Einheit",
      terms: { value: "Menge wie angegeben", size: "Umrechnungszahl" },
    },
    "area.rectangle": { found: GROUND, terms: { length: "Länge", width: "Breite" } },
    "area.triangle": { found: GROUND, terms: { base: "Grundseite", height: "Höhe" } },
    "area.triangle.sides": {
      found: GROUND,
      terms: { a: "längste Seite", b: "mittlere Seite", c: "kürzeste Seite" },
    },
    "area.trapezoid": {
      found: GROUND,
      terms: { base: "erste Parallelseite", top: "zweite Parallelseite", height: "Abstand der beiden" },
    },
    "area.circle": { found: GROUND, terms: { diameter: "Durchmesser" } },
    "area.ellipse": { found: GROUND, terms: { length: "ganze Länge", width: "Breite in der Mitte" } },
    "area.ring": {
      found: GROUND,
      terms: { outerDiameter: "äußerer Durchmesser", innerDiameter: "innerer Durchmesser" },
    },
    "area.sector": { found: GROUND, terms: { angleDegrees: "Winkel in Grad", radius: "Halbmesser" } },
    "area.composite": { found: GROUND, terms: { x: "Form {n}", y: "Abzug {n}" } },
    "area.boundary": { found: GROUND, terms: { x: "Ecke {n} quer", y: "Ecke {n} voraus" } },
    "area.offsets": { found: GROUND, terms: { spacing: "Abstand der Stationen", x: "Lot {n}" } },
    "area.unequalOffsets": { found: GROUND, terms: { a: "Station {n}", x: "Lot {n}" } },
    "area.treatPart": { found: TREATED, terms: { ground: GROUND, fraction: PART } },
    "area.treatedFraction": { found: PART, terms: { treated: TREATED, ground: GROUND } },
    "area.rowBands.ground": { found: GROUND, terms: { ...rows, rowSpacing: ROW_SPACING } },
    "area.rowBands.fraction": { found: PART, terms: { bandWidth: "Bandbreite", rowSpacing: ROW_SPACING } },
    "area.rowBands.treated": { found: TREATED, terms: { ...rows, bandWidth: "Bandbreite" } },
    "area.beds.ground": { found: GROUND, terms: { ...beds, bedSpacing: "Beetabstand" } },
    "area.beds.fraction": { found: PART, terms: { bedWidth: "Beetbreite", bedSpacing: "Beetabstand" } },
    "area.beds.treated": { found: TREATED, terms: { ...beds, bedWidth: "Beetbreite" } },
    "area.treeRows.ground": { found: GROUND, terms: { ...rows, rowSpacing: ROW_SPACING } },
    "area.treeRows.fraction": { found: PART, terms: { ...strips, rowSpacing: ROW_SPACING } },
    "area.treeRows.treated": { found: TREATED, terms: { ...rows, ...strips } },
    "area.spots": {
      found: TREATED,
      terms: {
        n: "Zahl der Flecken, Größe {n}",
        d: "Durchmesser, Größe {n}",
        x: "Fläche eines Flecks, Größe {n}",
        a: "Länge, Größe {n}",
        b: "Breite, Größe {n}",
      },
    },
    "area.rowLength": { found: "Länge aller Reihen", terms: { ground: GROUND, rowSpacing: ROW_SPACING } },
    "area.plantedGround": {
      found: GROUND,
      terms: { plants: "Zahl der Pflanzen", rowSpacing: ROW_SPACING, plantSpacing: PLANT_SPACING },
    },
    "area.plantCount": {
      found: "Zahl der Pflanzen",
      terms: { ground: GROUND, rowSpacing: ROW_SPACING, plantSpacing: PLANT_SPACING },
    },
    "area.cropRate": {
      found: "Aufwand je Grundfläche",
      terms: { treatedRate: "Aufwand je Bandfläche", bandWidth: "Bandbreite", rowSpacing: ROW_SPACING },
    },
    "area.treatedRate": {
      found: "Aufwand je Bandfläche",
      terms: { cropRate: "Aufwand je Grundfläche", bandWidth: "Bandbreite", rowSpacing: ROW_SPACING },
    },
    "swath.boom": {
      found: "Breite des Gestänges",
      terms: { nozzles: "Zahl der Düsen", nozzleSpacing: "Düsenabstand" },
    },
    "swath.bands.ground": {
      found: "Breite am Boden",
      terms: { bands: "Bänder je Fahrt", rowSpacing: ROW_SPACING },
    },
    "swath.bands.treated": {
      found: "Breite aller Bänder",
      terms: { bands: "Bänder je Fahrt", bandWidth: "Bandbreite" },
    },
    "swath.perNozzle": {
      found: "Breite einer Düse",
      terms: { width: "gemeinsame Breite", nozzles: "Zahl der Düsen" },
    },
    "swath.treeRow": {
      found: "Breite am Boden",
      terms: { rowSpacing: ROW_SPACING, sides: "offene Seiten des Geräts" },
    },
    "swath.effective": {
      found: "Zuwachs je Fahrt",
      terms: { width: "gemessene Breite", overlap: "Überlappung" },
    },
    "swath.passes.count": {
      found: "Zahl der Fahrten",
      terms: { side: "Seite des Schlags", swath: SWATH, overlap: "Überlappung" },
    },
    "swath.passes.lastOverlap": {
      found: "Überlappung der letzten Fahrt",
      terms: { side: "Seite des Schlags", swath: SWATH, overlap: "Überlappung", passes: "Zahl der Fahrten" },
    },
    "swath.passes.pastEdge": {
      found: "Überstand am Rand",
      terms: { side: "Seite des Schlags", swath: SWATH },
    },
    "swath.passes.distance": {
      found: "Weg beim Spritzen",
      terms: { passes: "Zahl der Fahrten", run: "Länge einer Fahrt" },
    },
    "swath.passes.time": {
      found: "Zeit beim Spritzen",
      terms: { distance: "Weg beim Spritzen", speed: SPEED },
    },
    "swath.boomHeight": {
      found: "Höhe des Gestänges",
      terms: {
        nozzleSpacing: "Düsenabstand",
        overlap: "Überlappung als Teil",
        angleDegrees: "Winkel in Grad",
      },
    },
    "swath.fanWidth": {
      found: "Breite eines Fächers",
      terms: { height: "Höhe des Gestänges", angleDegrees: "Winkel in Grad" },
    },
    "swath.overlap": {
      found: "Überlappung",
      terms: { fanWidth: "Breite eines Fächers", nozzleSpacing: "Düsenabstand" },
    },
    "swath.gap": {
      found: "Lücke zwischen zwei Fächern",
      terms: { fanWidth: "Breite eines Fächers", nozzleSpacing: "Düsenabstand" },
    },
    "swath.uniformity.mean": {
      found: "Mittel am Boden",
      terms: { w: "Breite von Streifen {n}", x: "Menge auf Streifen {n}" },
    },
    "swath.uniformity.cv": {
      found: "Variationskoeffizient",
      terms: { w: "Breite von Streifen {n}", x: "Menge auf Streifen {n}", mean: "Mittel am Boden" },
    },
    "output-rate.strip": {
      found: "Ausbringmenge auf der Probebahn",
      terms: { used: USED, swath: SWATH, distance: DISTANCE },
    },
    "output-rate.strip-runs": {
      found: "Mittel der Läufe",
      terms: { x: "Ergebnis von Lauf {n}", n: "Zahl der Läufe" },
    },
    "output-rate.strip-runs-spread": {
      found: "Streuung der Läufe",
      terms: scatter("Ergebnis von Lauf {n}"),
    },
    "output-rate.strip-runs-cv": {
      found: "Variationskoeffizient der Läufe",
      terms: { spread: "Streuung der Läufe", mean: "Mittel der Läufe" },
    },
    "output-rate.catch-total": { found: "aufgefangen im Ganzen", terms: { x: "aufgefangen, Düse {n}" } },
    "output-rate.catch": {
      found: "Ausbringmenge nach dem Auffangen",
      terms: {
        total: "aufgefangen im Ganzen",
        time: "Auffangzeit",
        rows: "Reihen oder Düsenabstände",
        width: WIDTH,
        speed: SPEED,
        travelTime: "Fahrzeit",
        travelled: "abgesteckte Strecke",
      },
    },
    "output-rate.speed": { found: SPEED, terms: { distance: DISTANCE, time: "Zeit" } },
    "output-rate.time-for": { found: "Zeit für die Strecke", terms: { distance: DISTANCE, speed: SPEED } },
    "output-rate.average-speed-distance": { found: "ganze Strecke", terms: { x: "Strecke, Fahrt {n}" } },
    "output-rate.average-speed-time": { found: "ganze Zeit", terms: { x: "Zeit, Fahrt {n}" } },
    "output-rate.flow": {
      found: "Ausstoß",
      terms: { caught: "aufgefangene Menge", time: "Auffangzeit" },
    },
    "output-rate.average-flow-caught": { found: "alles Aufgefangene", terms: { x: "Probe {n}" } },
    "output-rate.average-flow-time": { found: "ganze Zeit", terms: { x: "Zeit, Probe {n}" } },
    "output-rate.plant-volume": {
      found: "Menge je Pflanze",
      terms: { ...flow, time: "Zeit je Pflanze" },
    },
    "output-rate.plant-time": { found: "Zeit je Pflanze", terms: { ...flow, volume: "Menge je Pflanze" } },
    "output-rate.spray-time": { found: "Spritzzeit", terms: { ...flow, volume: "Menge zu spritzen" } },
    "output-rate.cover-time": {
      found: "Zeit für das Stück",
      terms: {
        area: TREATED,
        width: SWATH,
        speed: SPEED,
        travelTime: "Fahrzeit",
        travelled: "abgesteckte Strecke",
        efficiency: "Anteil der Spritzzeit in Prozent",
      },
    },
    "output-rate.rate-at-speed": {
      found: "Ausbringmenge beim neuen Tempo",
      terms: { rate: "Ausbringmenge beim alten Tempo", speed: "altes Tempo", newSpeed: "neues Tempo" },
    },
    "output-rate.direct-strip-area": {
      found: "Fläche zum Ablesen",
      terms: { caught: "aufgefangene Einheit", rate: "Einheit der Ausbringmenge" },
    },
    "output-rate.direct-strip": {
      found: "Strecke zum Ablesen",
      terms: { area: "Fläche zum Ablesen", width: WIDTH },
    },
    "output-rate.direct-strip-rate": {
      found: "abgelesene Ausbringmenge",
      terms: { caught: "aufgefangene Menge", reading: "Wert einer Einheit" },
    },
    "output-rate.tree-row-length": { found: "Volumen je Reihenlänge", terms: row },
    "output-rate.tree-row-plant": {
      found: "Volumen je Pflanze",
      terms: { ...row, plantSpacing: PLANT_SPACING },
    },
    "output-rate.tree-row": { found: PER_AREA, terms: { ...row, rowSpacing: ROW_SPACING } },
    "output-rate.tree-row-volume": {
      found: "Laubraum je Fläche",
      terms: { height: "Laubhöhe", width: "Laubbreite", rowSpacing: ROW_SPACING },
    },
    "output-rate.dilute-rate": {
      found: "volle Menge je Fläche",
      terms: { canopy: "Laubraum je Fläche", spray: "Brühe je Laubraum" },
    },
    "output-rate.per-plant": {
      found: "Menge je Pflanze",
      terms: {
        rate: PER_AREA,
        rowSpacing: ROW_SPACING,
        plantSpacing: PLANT_SPACING,
        ground: GROUND,
        plants: "Zahl der Pflanzen",
      },
    },
    "output-rate.hand-area": {
      found: PER_AREA,
      terms: {
        used: USED,
        area: TREATED,
        rowLength: ROW_LENGTH,
        plants: "Zahl der Pflanzen",
        plantSpacing: PLANT_SPACING,
        rowSpacing: ROW_SPACING,
      },
    },
    "output-rate.hand-length": {
      found: "Volumen je Reihenlänge",
      terms: {
        used: USED,
        rowLength: ROW_LENGTH,
        plants: "Zahl der Pflanzen",
        plantSpacing: PLANT_SPACING,
      },
    },
    "output-rate.hand-plant": {
      found: "Volumen je Pflanze",
      terms: {
        used: USED,
        rowLength: ROW_LENGTH,
        plants: "Zahl der Pflanzen",
        plantSpacing: PLANT_SPACING,
      },
    },
    "output-rate.solve-rate": { found: OUTPUT, terms: { flow: "Ausstoß", speed: SPEED, width: WIDTH } },
    "output-rate.solve-flow": { found: "Ausstoß", terms: { rate: OUTPUT, speed: SPEED, width: WIDTH } },
    "output-rate.solve-speed": { found: SPEED, terms: { flow: "Ausstoß", rate: OUTPUT, width: WIDTH } },
    "output-rate.solve-width": { found: WIDTH, terms: { flow: "Ausstoß", rate: OUTPUT, speed: SPEED } },
    "output-rate.output-at-pressure": {
      found: "Ausstoß beim neuen Druck",
      terms: { output: "Ausstoß beim alten Druck", newPressure: "neuer Druck", pressure: "alter Druck" },
    },
    "output-rate.pressure-for-output": {
      found: "Druck für den gewünschten Ausstoß",
      terms: { pressure: "Druck jetzt", newOutput: "gewünschter Ausstoß", output: "Ausstoß jetzt" },
    },
    "output-rate.density-factor": {
      found: "Dichtefaktor",
      terms: { density: "Dichte der Brühe", waterDensity: "Dichte von Wasser" },
    },
    "output-rate.water-for-solution": {
      found: "Ausstoß mit Wasser",
      terms: { solution: "Ausstoß mit Brühe", factor: "Dichtefaktor" },
    },
    "output-rate.solution-for-water": {
      found: "Ausstoß mit Brühe",
      terms: { water: "Ausstoß mit Wasser", factor: "Dichtefaktor" },
    },
    "output-rate.nozzle-flow": {
      found: "Ausstoß einer Düse",
      terms: { caught: "aufgefangene Menge", time: "Auffangzeit" },
    },
    "output-rate.nozzle-mean": {
      found: "mittlerer Ausstoß",
      terms: { x: "Ausstoß von Düse {n}", n: "Zahl der Düsen" },
    },
    "output-rate.nozzle-deviation": {
      found: "Abweichung einer Düse",
      terms: { flow: "Ausstoß einer Düse", reference: "Vergleichswert" },
    },
    "output-rate.nozzle-spread": { found: "Streuung der Düsen", terms: scatter("Ausstoß von Düse {n}") },
    "output-rate.nozzle-cv": {
      found: "Variationskoeffizient des Gestänges",
      terms: { spread: "Streuung der Düsen", mean: "mittlerer Ausstoß" },
    },
    "output-rate.target-check": {
      found: "Abweichung vom Ziel",
      terms: { rate: "gemessene Ausbringmenge", target: "gewünschte Ausbringmenge" },
    },
    "output-rate.spreader-strip": {
      found: "Streumenge",
      terms: { used: "gestreute Menge", swath: "Breite der Spur", distance: "Strecke" },
    },
    "output-rate.spreader-area": {
      found: "Streumenge",
      terms: { used: "gestreute Menge", area: "Fläche der Probe" },
    },
    "output-rate.spreader-row": {
      found: "Streumenge je Reihe",
      terms: { used: "gestreute Menge", rowLength: "Länge der Reihe" },
    },
    "output-rate.spreader-pass": {
      found: "Zielmenge je Richtung",
      terms: { target: "Zielmenge", directions: "Richtungen" },
    },
    "output-rate.spreader-catch-strip": {
      found: "aufzufangende Menge",
      terms: { target: "Zielmenge", swath: "Breite der Bahn", distance: "Strecke", directions: "Richtungen" },
    },
    "output-rate.spreader-catch-area": {
      found: "aufzufangende Menge",
      terms: { target: "Zielmenge", area: "Fläche der Probe", directions: "Richtungen" },
    },
    "output-rate.spreader-catch-row": {
      found: "aufzufangende Menge",
      terms: { target: "Zielmenge", rowLength: "Länge der Reihe", directions: "Richtungen" },
    },
    "output-rate.resolution": {
      found: "Unsicherheit einer Ablesung",
      terms: { resolution: "kleinster Teilstrich" },
    },
    "output-rate.uncertainty-used": part(USED),
    "output-rate.uncertainty-swath": part(SWATH),
    "output-rate.uncertainty-distance": part(DISTANCE),
    "output-rate.uncertainty-caught": part("aufgefangene Menge"),
    "output-rate.uncertainty-catches": part("aufgefangen, eine Düse"),
    "output-rate.uncertainty-time": part("Zeit"),
    "output-rate.uncertainty-speed": part(SPEED),
    "output-rate.uncertainty-width": part(WIDTH),
    "output-rate.uncertainty-area": part(TREATED),
    "output-rate.uncertainty-rowLength": part(ROW_LENGTH),
    "output-rate.uncertainty-rowSpacing": part(ROW_SPACING),
    "output-rate.uncertainty-plantSpacing": part(PLANT_SPACING),
    "output-rate.uncertainty-flow": part("Ausstoß"),
    "output-rate.uncertainty-rate": part("bekannte Ausbringmenge"),
    "output-rate.uncertainty-scatter": {
      found: "Beitrag der Streuung",
      terms: { spread: "Streuung der Läufe", mean: "Mittel der Läufe", n: "Zahl der Läufe" },
    },
    "output-rate.uncertainty-relative": {
      found: "gesamte Unsicherheit als Teil",
      terms: { p: "Beitrag von Quelle {n}" },
    },
    "output-rate.uncertainty": {
      found: "gesamte Unsicherheit",
      terms: { rate: OUTPUT, relative: "gesamte Unsicherheit als Teil" },
    },
    "output-rate.changed-nozzleSpacing": changed("Düsenabstand"),
    "output-rate.changed-pressure": changed("Druck"),
    "output-rate.changed-speed": changed(SPEED),
    "output-rate.changed-density": changed("Dichte der Brühe"),
    "output-rate.changed": {
      found: "zu erwartende Ausbringmenge",
      terms: { rate: "gemessene Ausbringmenge", x: "Faktor {n}" },
    },
    "tank-mix.sprayed": { found: "Brühe auf der Fläche", terms: { rate: OUTPUT, area: TREATED } },
    "tank-mix.each": {
      found: "Brühe für jede Pflanze",
      terms: { used: "Wasser für alle zusammen", plants: "Zahl der Pflanzen" },
    },
    "tank-mix.perLength": {
      found: "Brühe je Reihenlänge",
      terms: { used: "verbrauchtes Wasser", length: "Reihenlänge, auf der es verbraucht wurde" },
    },
    "tank-mix.batchOfCount": {
      found: "Brühe für alle",
      terms: { each: "Brühe für jede", count: "Anzahl" },
    },
    "tank-mix.batchOfRow": {
      found: "Brühe für alle Reihen",
      terms: { rate: "Brühe je Reihenlänge", length: "Länge aller Reihen" },
    },
    "tank-mix.reserve": {
      found: "Zugabe",
      terms: { sprayed: "Brühe auf der Fläche", percent: "Prozent Zugabe" },
    },
    "tank-mix.carrier": {
      found: MIX,
      terms: { sprayed: "Brühe auf der Fläche", lines: "Rest in den Leitungen", reserve: "Zugabe" },
    },
    "tank-mix.carrierSteps": {
      found: "wie oft das runde Maß nötig ist",
      terms: { sprayed: "Brühe auf der Fläche", lines: "Rest in den Leitungen", step: "rundes Maß" },
    },
    "tank-mix.carrierRounded": { found: MIX, terms: { times: "so oft wie nötig", step: "rundes Maß" } },
    "tank-mix.fills": {
      found: "wie oft der Tank nötig ist",
      terms: { total: MIX, fill: "Füllung", full: "voller Tank, bis zur höchsten Marke" },
    },
    "tank-mix.loads": { found: "Zahl der Füllungen", terms: { fills: "so oft wie nötig" } },
    "tank-mix.piece": {
      found: "Brühe für ein Stück",
      terms: { total: MIX, lines: "Rest in den Leitungen", reserve: "Zugabe", pieces: "Zahl der Stücke" },
    },
    "tank-mix.most": {
      found: "Stücke je Füllung, höchstens",
      terms: {
        fill: "Füllung",
        full: "voller Tank, bis zur höchsten Marke",
        lines: "Rest in den Leitungen",
        reserve: "Zugabe",
        piece: "Brühe für ein Stück",
      },
    },
    "tank-mix.perLoad": {
      found: "ganze Stücke je Füllung",
      terms: {
        most: "Stücke je Füllung, höchstens",
        pieces: "Zahl der Stücke",
        chosen: "gewählt, höchstens je Füllung",
      },
    },
    "tank-mix.loadsOfPieces": {
      found: "Zahl der Füllungen",
      terms: { pieces: "Zahl der Stücke", perLoad: "ganze Stücke je Füllung" },
    },
    "tank-mix.fullMarkSteps": {
      found: "Marken bis zur Füllung",
      terms: { fill: "Tankfüllung", step: "von Marke zu Marke" },
    },
    "tank-mix.fullMark": {
      found: "voller Tank, bis zur höchsten Marke",
      terms: { times: "Marken bis zur Füllung", step: "von Marke zu Marke" },
    },
    "tank-mix.equalLoad": {
      found: "was jede Füllung fassen muss",
      terms: { total: "Brühe im Ganzen", loads: "Zahl der Füllungen" },
    },
    "tank-mix.rest": {
      found: "was die letzte Füllung fassen muss",
      terms: {
        total: "Brühe im Ganzen",
        full: "voller Tank, bis zur höchsten Marke",
        loads: "Zahl der Füllungen",
      },
    },
    "tank-mix.lent": {
      found: "was die vorletzte Füllung fassen muss",
      terms: {
        full: "voller Tank, bis zur höchsten Marke",
        rest: "was die letzte Füllung fassen muss",
        last: "letzte Füllung, bis zu ihrer Marke",
      },
    },
    "tank-mix.loadOfPieces": {
      found: "was die Füllung fassen muss",
      terms: {
        pieces: "Reihen oder Stücke",
        piece: "Brühe für eines",
        lines: "Rest in den Leitungen",
        reserve: "Zugabe",
      },
    },
    "tank-mix.markSteps": {
      found: "Marken bis zur Menge",
      terms: { load: "was die Füllung fassen muss", step: "von Marke zu Marke" },
    },
    "tank-mix.mark": {
      found: "Marke, bis zu der gefüllt wird",
      terms: { times: "Marken bis zur Menge", step: "von Marke zu Marke" },
    },
    "tank-mix.markedTotal": {
      found: "Brühe im Ganzen, jede Füllung auf einer Marke",
      terms: { n: "Füllungen der Größe {n}", x: "Füllung der Größe {n}" },
    },
    "tank-mix.toMark": {
      found: "mehr Brühe bis zu den Marken",
      terms: { marked: "Brühe im Ganzen, jede Füllung auf einer Marke", total: "Brühe im Ganzen" },
    },
    "tank-mix.productRate": {
      found: "Aufwand des Mittels",
      terms: { activeIngredient: "Aufwand des Wirkstoffs", content: CONTENT, density: "Dichte des Mittels" },
    },
    "tank-mix.activeIngredient": {
      found: "Aufwand des Wirkstoffs",
      terms: { product: "Aufwand des Mittels", content: CONTENT, density: "Dichte des Mittels" },
    },
    "tank-mix.strength": {
      found: "Mittel je Maß Brühe",
      terms: { rate: "Aufwand des Mittels", carrierRate: OUTPUT },
    },
    "tank-mix.strengthOfCount": {
      found: "Mittel je Maß Brühe",
      terms: { rate: "Mittel für eines", carrierRate: "Brühe für eines" },
    },
    "tank-mix.strengthOfLength": {
      found: "Mittel je Maß Brühe",
      terms: { rate: "Mittel je Länge", carrierRate: "Brühe je Länge" },
    },
    "tank-mix.strengthByGround": {
      found: "Mittel je Maß Brühe",
      terms: { rate: "Aufwand je Grundfläche", ground: GROUND, carrierRate: OUTPUT, area: TREATED },
    },
    "tank-mix.strengthByRow": {
      found: "Mittel je Maß Brühe",
      terms: { rate: "Aufwand je Reihe", rowLength: ROW_LENGTH, carrierRate: OUTPUT, area: TREATED },
    },
    "tank-mix.strengthOfPart": {
      found: "Mittel je Maß Brühe",
      terms: { part: "Teil der Brühe", size: "ein Maß Brühe" },
    },
    "tank-mix.strengthOfRatio": {
      found: "Mittel je Maß Brühe",
      terms: { parts: "Teile Mittel", whole: "Teile im Ganzen", size: "ein Maß Brühe" },
    },
    "tank-mix.amount": {
      found: "Mittel im Ganzen",
      terms: { strength: "Mittel je Maß Brühe", carrier: MIX },
    },
    "tank-mix.amountOfPart": {
      found: "Mittel im Ganzen",
      terms: { part: "Teil der Brühe", carrier: MIX },
    },
    "tank-mix.amountOfRatio": {
      found: "Mittel im Ganzen",
      terms: { carrier: MIX, parts: "Teile Mittel", whole: "Teile im Ganzen" },
    },
    "tank-mix.amountInLoad": {
      found: "Mittel in der Füllung",
      terms: { amount: "Mittel im Ganzen", carrier: "Brühe der Füllung", total: MIX },
    },
    "tank-mix.water": {
      found: "Wasser in der Füllung",
      terms: { mix: "Brühe der Füllung", x: "flüssiges Mittel {n}" },
    },
    "tank-mix.lacking": {
      found: "fehlendes Mittel",
      terms: { product: "Mittel in der Brühe", added: "Wasser dazu", mix: "richtige Brühe" },
    },
    "tank-mix.strengthLeft": {
      found: "verbliebene Stärke",
      terms: { mix: "richtige Brühe", added: "Wasser dazu" },
    },
    "tank-mix.weakBy": { found: "Schwächung", terms: { mix: "richtige Brühe", added: "Wasser dazu" } },
    "tank-mix.leftoverArea": {
      found: "Fläche für den Rest",
      terms: { volume: "Rest der Brühe", rate: OUTPUT },
    },
    "tank-mix.take": {
      found: "davon zu nehmen",
      terms: { volume: "gewünschtes Volumen", to: "gewünschte Stärke", from: "vorhandene Stärke" },
    },
    "tank-mix.dilutionWater": {
      found: "Wasser zum Auffüllen",
      terms: { volume: "gewünschtes Volumen", take: "davon zu nehmen" },
    },
    "tank-mix.stock": {
      found: "Stammlösung zum Abmessen",
      terms: { volume: "Stammlösung im Ganzen", dose: WANTED, amount: "Mittel in der Stammlösung" },
    },
    "tank-mix.concentrateFactor": {
      found: "Konzentrierung",
      terms: { dilute: "volle Menge je Fläche", concentrate: "kleine Menge je Fläche" },
    },
    "tank-mix.concentrateRate": {
      found: "kleine Menge je Fläche",
      terms: { dilute: "volle Menge je Fläche", factor: "Konzentrierung" },
    },
    "tank-mix.concentratePerArea": {
      found: "Mittel je Fläche",
      terms: { strength: "Mittel je Maß dünner Brühe", dilute: "volle Menge je Fläche" },
    },
    "tank-mix.concentrateStrength": {
      found: "Mittel je Maß Brühe",
      terms: { strength: "Mittel je Maß dünner Brühe", factor: "Konzentrierung" },
    },
    "tank-mix.injectorFinished": { found: "fertige Lösung", terms: injector },
    "tank-mix.injectorStock": { found: "Stammlösung", terms: injector },
    "tank-mix.stockStrength": { found: "Stärke der Stammlösung", terms: injector },
    "tank-mix.injectedStrength": { found: "Stärke der fertigen Lösung", terms: injector },
    "tank-mix.injectedLow": { found: "Stärke bei zu wenig Stammlösung", terms: injector },
    "tank-mix.injectedHigh": { found: "Stärke bei zu viel Stammlösung", terms: injector },
    "tank-mix.injectorRatio": { found: "Teile auf einen Teil Stammlösung", terms: injector },
    "tank-mix.injectorOff": { found: "Abweichung der Stärke", terms: injector },
    "tank-mix.rinse": {
      found: "Stärke nach dem Spülen",
      terms: { residual: "Rest im Gerät", water: "Wasser je Spülung", rinses: "Zahl der Spülungen" },
    },
    "tank-mix.jarAmount": {
      found: "Mittel im Glas",
      terms: { amount: "Mittel in der Brühe", jar: "Brühe im Glas", mix: "Brühe im Tank" },
    },
    "tank-mix.granules-area": {
      found: "zu streuende Menge",
      terms: { rate: "Aufwand des Mittels", area: "behandelte Fläche" },
    },
    "tank-mix.granules-rowLength": {
      found: "zu streuende Menge",
      terms: { rate: "Aufwand des Mittels", rowLength: "Länge aller Reihen" },
    },
    "tank-mix.granules-plants": {
      found: "zu streuende Menge",
      terms: { rate: "Aufwand des Mittels", plants: "Zahl der Pflanzen" },
    },
    "tank-mix.granules-cover": {
      found: "Fläche, für die es reicht",
      terms: { amount: "Menge des Mittels", rate: "Aufwand des Mittels" },
    },
    "tank-mix.hopper-direction": {
      found: "Menge je Richtung",
      terms: { total: "zu streuende Menge", directions: "Richtungen" },
    },
    "tank-mix.hopper-fills": {
      found: "Füllungen je Richtung",
      terms: { perDirection: "Menge je Richtung", hopper: "ein Behälter" },
    },
    "tank-mix.hopper-last": {
      found: "letzte Füllung",
      terms: { perDirection: "Menge je Richtung", fills: "Füllungen je Richtung", hopper: "ein Behälter" },
    },
    "tank-mix.bags": {
      found: "Säcke",
      terms: { total: "zu streuende Menge", bag: "ein Sack" },
    },
    "tank-mix.bags-left": {
      found: "Rest im letzten Sack",
      terms: { bags: "Säcke", bag: "ein Sack", total: "zu streuende Menge" },
    },
    "tank-mix.nutrient-content": {
      found: "Gehalt am gesuchten Nährstoff",
      terms: { content: "angegebener Gehalt", parts: "Gewicht des Elements", whole: "Gewicht des Oxids" },
    },
    "tank-mix.nutrient-convert": {
      found: "derselbe Nährstoff, umgerechnet",
      terms: { amount: "Menge des Nährstoffs", parts: "Gewicht des Elements", whole: "Gewicht des Oxids" },
    },
    ...perNutrient("tank-mix.fertilizer-", NUTRIENTS, (nutrient) => ({
      found: "Dünger",
      terms: { nutrient, content: `Gehalt an ${nutrient}` },
    })),
    ...perNutrient("tank-mix.nutrient-", NUTRIENTS, (nutrient) => ({
      found: `${nutrient} aus dem Dünger`,
      terms: { product: "Dünger", content: `Gehalt an ${nutrient}` },
    })),
    "household.measured": {
      found: "abgemessene Menge",
      terms: {
        n: "Anzahl: {tools}",
        x: "Inhalt: {tool}",
        t: "so oft: {tool}",
        m: "abgelesen: {tool}",
      },
    },
    "household.error": { found: "Messfehler", terms: { measured: "abgemessene Menge", amount: WANTED } },
    "household.errorPercent": {
      found: "Messfehler in Prozent",
      terms: { error: "Messfehler", amount: WANTED },
    },
    "household.rateError": { found: "Messfehler je Fläche", terms: { error: "Messfehler", area: TREATED } },
    "household.volumeOfWeight": {
      found: "Raum des trockenen Mittels",
      terms: { mass: "Gewicht des Mittels", density: "Schüttdichte" },
    },
    "household.stock.strength": {
      found: "Stärke der Stammlösung",
      terms: { product: "Mittel in der Stammlösung", stock: "Stammlösung im Ganzen" },
    },
    "household.stock.part": {
      found: "Anteil für die Menge",
      terms: { amount: WANTED, strength: "Stärke der Stammlösung" },
    },
    "household.stock.measured": {
      found: "abgemessen aus der Stammlösung",
      terms: { strength: "Stärke der Stammlösung", taken: "entnommen" },
    },
    "plan.treated": { found: "behandelte Fläche im Ganzen", terms: { x: "Schlag {n}" } },
    "practice.spoons": {
      found: "ganze gestrichene Löffel",
      terms: { amount: "Menge des Mittels", spoon: "ein Löffel" },
    },
    "practice.product": {
      found: "Mittel für den Schlag",
      terms: { rate: "Aufwand des Mittels", area: TREATED },
    },
    "practice.productOnGround": {
      found: "Mittel für den Schlag",
      terms: { rate: "Aufwand des Mittels", area: "Fläche des Schlags" },
    },
    "practice.fertilizer": {
      found: "Dünger für den Schlag",
      terms: { rate: "Dünger", area: "Fläche des Schlags" },
    },
    "practice.spotMix": {
      found: "Brühe für alle Stellen",
      terms: { spots: "Zahl der Stellen", each: "Brühe je Stelle" },
    },
    "practice.seasonLeft": {
      found: "Anwendungen, die noch möglich sind",
      terms: { limit: "Höchstmenge im Jahr", done: "bisherige Anwendungen", rate: "Aufwand je Anwendung" },
    },
    "practice.catchOnStrip": {
      found: "aufgefangen in der Zeit für den Streifen",
      terms: { caught: "aufgefangen", walk: "Zeit für den Streifen", time: "Zeit des Auffangens" },
    },
    "practice.catchMean": {
      found: "Mittel der Düsen",
      terms: { x: "aufgefangen unter Düse {n}", n: "Zahl der Düsen" },
    },
    "practice.nozzleOff": {
      found: "Abweichung vom Mittel (größeres − kleineres)",
      terms: { worst: "Düse {n}, die schlechteste", mean: "Mittel der Düsen" },
    },
    "practice.solution": {
      found: "Lösung aus der Stammlösung",
      terms: { ratio: "Teile Lösung auf einen Teil Stammlösung", stock: "Stammlösung" },
    },
    "practice.lastLoad": {
      found: "Brühe in der letzten Füllung",
      terms: { total: "Brühe im Ganzen", loads: "Zahl der Füllungen", fill: "eine Tankfüllung" },
    },
    "practice.allRows": {
      found: "Länge aller Reihen",
      terms: { rows: "Zahl der Reihen", rowLength: "Länge einer Reihe" },
    },
    "practice.productOnRows": {
      found: "Mittel für die Reihen",
      terms: { rate: "Aufwand je Reihenlänge", rowLength: "Länge aller Reihen" },
    },
  },
  functions: {
    sqrt: "Wurzel aus ({x})",
    ceil: "aufrunden({x})",
    floor: "abrunden({x})",
    min: "kleinstes von({x})",
    max: "größtes von({x})",
    sin: "Sinus({x})",
    cos: "Kosinus({x})",
    tan: "Tangens({x})",
  },
  steps: {
    area: "Behandelte Fläche",
    rate: "Ausbringmenge",
    size: "Brühe für die Arbeit",
    carrier: "Brühe",
    loads: "Tankfüllungen",
    product: "Mittel: {product}",
    dose: "{product}, gemessen für Füllung {load}",
    error: "{product}, Füllung {load}: wie weit daneben",
    fertilizer: "Dünger für den Nährstoff",
    amount: "Menge für die Arbeit",
    hopper: "Behälterfüllungen",
    bags: "Säcke",
    test: "Abdrehprobe",
  },
  cautions: {
    label: "Es gilt die Gebrauchsanleitung.",
    "clean-water": "Nur mit klarem Wasser eichen.",
    protection: "Die vorgeschriebene Schutzkleidung tragen.",
    drift: "Nicht spritzen, wenn der Wind die Brühe abtreiben kann.",
    rinse: "Leere Behälter dreimal in den Tank ausspülen.",
    tools: "Messgeräte nur für Pflanzenschutzmittel verwenden.",
    recalibrate: "Nach jeder Änderung neu eichen.",
    "local-rules": "Es gelten die Vorschriften am Ort.",
    spreader:
      "Den Streuer mit dem Mittel selbst abdrehen, im üblichen Tempo. Neu abdrehen, wenn sich Person, Tempo, Mittel, Wetter oder Boden ändern.",
    "protection-spreading":
      "Beim Abwiegen, Einfüllen, Streuen und Reinigen die Schutzausrüstung laut Etikett tragen.",
    sweep:
      "Körner von befestigten Flächen auf die Fläche zurückfegen. Von Abläufen, Gräben und Gewässern fernhalten.",
    "local-rules-spreading":
      "Die örtlichen Vorschriften befolgen: was gestreut werden darf, von wem, wann, wie nah am Wasser, und wohin der Rest kommt.",
  },
  issues: {
    "mix-over-tank":
      "{total} sind mehr, als der Tank fasst ({tank}): {loads} {loads:one=Füllung;other=Füllungen}.",
    "mix-over-fill": "{total} sind mehr als {tank} im Tank: {loads} {loads:one=Füllung;other=Füllungen}.",
    "scale-needed": "{product}: abwiegen.",
    "whole-bags": "{product}: {bag} für {mix} Brühe, nur ganze Beutel.",
    "ounces-confusable-liquid": "{product}: Unze ist nicht gleich Unze.",
    "rate-over-max": "{rate} ist über der Höchstmenge von {max}.",
    dimension: "{given} ist {is.dimension}. Nötig ist {expected.expected}, etwa {example.typed}.",
  },
  names: {
    ...ENGLISH_WORDS.names,
    dimension: { ...ENGLISH_WORDS.names.dimension, volume: "ein Volumen" },
    expected: { ...ENGLISH_WORDS.names.expected, length: "eine Länge", area: "eine Fläche" },
  },
  tools: {
    tablespoon: { one: "Esslöffel", other: "Esslöffel" },
    teaspoon: { one: "Teelöffel", other: "Teelöffel" },
    cup: { one: "Tasse", other: "Tassen" },
    "200 g scale": { one: "Waage bis 200 g", other: "Waagen bis 200 g" },
  },
  units: { "gal/ac": "Gallonen je Acre", ac: "Acre", tsp: "TL", tbsp: "EL" },
  sources: { definition: "Begriffsbestimmung", "plane geometry": "ebene Geometrie" },
  text: {
    title: "Spritzauftrag",
    cardTitle: "Feldkarte",
    summary: "Der Auftrag",
    what: "Was",
    howMuch: "Wie viel",
    treatedArea: "Behandelte Fläche",
    groundArea: "Grundfläche",
    outputRate: "Ausbringmenge",
    number: "Anzahl",
    eachTimed: "{time} spritzen ({volume})",
    band: "Band",
    strip: "Streifen",
    onEachRow: "{width} je Reihe",
    onOneSide: "{width} auf einer Seite jeder Reihe",
    onBothSides: "{width} auf beiden Seiten jeder Reihe",
    eachGets: "Menge für jede",
    rowLength: "Reihenlänge",
    perLength: "Brühe je Reihenlänge",
    totalMix: "Brühe im Ganzen",
    totalOf: "{total} ({parts})",
    mixForPlot: "{volume} für die Fläche",
    mixForJob: "{volume} für die Arbeit",
    mixExtra: "{volume} Zugabe",
    mixInHose: "{volume} im Schlauch",
    leftover: "Rest am Ende",
    leftoverJob: "Rest am Ende der Arbeit",
    leftoverWithArea: "{leftover}, die Zugabe darin genug für {area}",
    rateOf: "Aufwand von {product}",
    rateOfActive: "{rate} Wirkstoff",
    rateOfMix: "{parts} in {to} der Brühe",
    rateOfWater: "{parts} zu {to} Wasser",
    rateOnGround: "{rate} Grundfläche",
    load: "Füllung {number} von {count}",
    loads: "Tankfüllungen",
    product: "Mittel",
    amount: "Menge",
    measure: "Abmessen",
    fillTo: "{carrier} im Tank, samt Mitteln",
    areaWithRows: "{area} (etwa {rows})",
    where: "Wo",
    plotOrder: "Flächen, der Reihe nach",
    rowOrder: "Reihen, der Reihe nach",
    plotNumber: "Fläche {number}",
    loadsAlike: "Füllungen {loads} von {count}, je",
    loadsPair: "{from} und {to}",
    loadsFromTo: "{from} bis {to}",
    byVolume: "{rate} des Volumens",
    weightInVolume: "{rate}, Gewicht im Volumen",
    about: "etwa {area}",
    upTo: "bis zu {area}",
    covers: "Reicht für {area}.",
    rows: "{n} {count:one=Reihe;other=Reihen}",
    beds: "{n} {count:one=Beet;other=Beete}",
    passes: "{n} {count:one=Bahn;other=Bahnen}",
    lengthOfRow: "{length} Reihe",
    rowNumber: "Reihe {number}",
    bedNumber: "Beet {number}",
    passNumber: "Bahn {number}",
    passesAlong: "{passes} längs der Seite von {side}",
    partOfPlot: "{part} der Fläche",
    partOf: "{percent} von {plot}",
    endOf: "dem Ende von {row}",
    plotEnd: "dem Ende der Fläche",
    lastPassOf: "Letzte Bahn",
    lastPass:
      "nur {width} breit: nichts zweimal spritzen. Geht es nicht so schmal, alle Bahnen {even} breit spritzen und neu kalibrieren",
    lastPassRows: "nur {rows}",
    lastPasses: "auf manchen Flächen schmaler: nichts zweimal spritzen",
    bothSides: "beiden Seiten von {row}",
    downRow: "{part} von {row}",
    halfDownRow: "der Mitte von {row}",
    placeInPlot: "{place} in {plot}",
    sprayTo: "Etwa {covers} spritzen, bis zu {place}.",
    sprayRest: "Den Rest spritzen, bis zu {place}.",
    sprayAll: "Spritzen: genug für alles.",
    runOut: "Nachsehen, wo jede Füllung zu Ende ist: {ends}.",
    loadRunsOut: "Füllung {load} nach etwa {done}",
    doesRest: "Füllung {load} ist die letzte: am Ende aufhören.",
    stopBefore: "Ist Füllung {load} vor {least} zu Ende: aufhören und neu eichen.",
    stopOutside: "Ist Füllung {load} vor {least} oder nach {most} zu Ende: aufhören und neu eichen.",
    sprayOut: "Spritzen, bis der Tank leer ist{covers}. Dort geht es weiter.",
    useOut: "Spritzen oder gießen, bis der Tank leer ist{covers}. Dort geht es weiter.",
    outCovers: ": {covers}",
    outTo: ": etwa {covers}, bis zu {place}",
    outEach: ": {covers} je Füllung",
    pourBags:
      "{product}: {amount} in löslichen Beuteln. Beutel nicht öffnen. Nur ganze Beutel; sonst eine andere Füllung.",
    wholeBags: "ganze Beutel, ungeöffnet; sonst eine andere Füllung",
    topUpFull: "Mit Wasser auffüllen, bis der Tank voll ist.",
    fillAll: "ein voller Tank, samt Mitteln",
    spareLoad: "Diese Füllung ist ganz Reserve. Nur ansetzen, wenn Brühe fehlt.",
    spraySpare: "Von dort weiter spritzen, wo die Brühe fehlte.",
    mixToMark: "{volume} bis zu den Marken",
    fillToMark: "bis zur Marke {carrier}, samt Mitteln",
    topUpToMark: "Mit Wasser auffüllen bis zur Marke {carrier}.",
    leftInTankFor: "Am Ende sollten etwa {left} im Tank bleiben (genug für {area}). Nichts zweimal spritzen.",
    leftInTank: "Am Ende sollten etwa {left} im Tank bleiben.",
    mixingOrder: "Reihenfolge, wenn die Anleitung nichts anderes sagt: {order}.",
    doNotMix: "Nicht ansetzen: siehe die Hinweise oben.",
    rinse: "Messgeräte und leere Packungen in den Tank ausspülen.",
    halfFill: "{half} Wasser einfüllen, Rührwerk an.",
    pour: "{product}: {amount}. Abmessen: {measures} ({remark}).",
    pourOtherwise: "{product}: {amount}. Mit diesem Gerät nicht zu messen.",
    pourWithTool: "{product}: {amount}. Dazu wird noch gebraucht: {tool}. Abmessen: {measures} ({remark}).",
    topUp: "Mit Wasser auffüllen bis {carrier}.",
    waterByJug:
      "Keine Marke bei {carrier}? {water} Wasser abmessen und für die nächsten zwei Schritte nehmen.",
    spray: "Ausspritzen: genug für {area}.",
    use: "Ausbringen; genug für {area}.",
    useAll: "Ausbringen.",
    severalLoads: "{loads} Füllungen mit {load}",
    fillingOrder: "Das Etikett geht vor.",
    exactly: "genau",
    under: "{percent} darunter",
    over: "{percent} darüber",
    fills: "{count} {tools}",
    fillsOf: "Füllungen: {tool}",
    toMark: "{tool} bis {mark}",
    toMarkTimes: "{count}-mal {tool} bis {mark}",
    weigh: "{mark} auf: {tool}",
    weighTimes: "{count}-mal {mark} auf: {tool}",
    doNotMeasure: "so nicht zu messen",
    totalProduct: "In allen Füllungen",
    working: "Rechenweg",
    unitsInOne: "{amount} je 1 {unit}",
    rounding: "Gerundet wird nur zum Lesen.",
    sources: "Quellen",
    cautions: "Hinweise",
    warnings: "Zuerst ansehen",
    severityNote: "Hinweis",
    severityWarning: "Warnung",
    severityRefusal: "Nicht spritzen",
    ofProduct: "{product}: {issue}",
    ofPlot: "Auf {plot}: {issue}",
    ofProductOnPlot: "{product} auf {plot}: {issue}",
    perPass: "Menge je Überfahrt",
    testResult: "Ausbringung in der Abdrehprobe",
    nutrient: "{nutrient} darin",
    totalOfProduct: "{product} insgesamt",
    bags: "Säcke",
    bagsAndRest: "{bags} ({rest} bleiben übrig)",
    reEntry: "Betreten verboten für",
    beforeHarvest: "Nicht ernten für",
    days: "{days} {days:one=Tag;other=Tage}",
    waitOrMore: "{wait}, oder länger nach dem Etikett von {products}",
    fillsAndPlots: "Füllungen und Flächen",
    spreadIt: "Füllen und streuen",
    lengthwise: "Längs: {perDirection}",
    crosswise: "Quer: {perDirection}",
    fillHopper: "{hopper} einfüllen und streuen.",
    fillHopperTimes: "{hopper} einfüllen und streuen. {times}-mal.",
    spreadPlot: "{plot}: {amount} abwiegen und streuen.",
    spreadPieces: "{plot}: je {each} auf {rows} ({amount}).",
    spreadRow: "{place} ({length}): {amount} abwiegen und streuen.",
    spreadRun: "{plot}: je {length} von {rows} {each} ({amount}).",
    hopperHolds: "Im Behälter ist Platz für {hopper}: so oft füllen wie nötig.",
    giveEach: "Jede bekommt {each}.",
    hopperFor: "Ein voller Behälter reicht für etwa {count}.",
    spreadRest: "Was übrig bleibt, nicht noch einmal streuen. Reicht es nicht: aufhören und neu prüfen.",
    lastFill: "Zuletzt {lastFill} abwiegen und streuen.",
    onlyFill: "{lastFill} abwiegen, einfüllen und streuen.",
    doNotSpread: "Nicht streuen",
    doNotFill: "Nicht einfüllen. Siehe die Warnung oben.",
    spreadingTitle: "Arbeitsblatt für den Streuer",
  },
};
