import { frozen } from "../frozen.js";
import type { MistakeWords } from "../practice/mistakes.js";
import type { TopicWords } from "../practice/topic-words.js";
import type { PracticeLines, PracticeMessages } from "../practice/words.js";
import type { LineTable } from "../worksheet/words/line-table.js";
import { SPANISH_WORDS } from "./es.js";

const mistake = (what: string, see: string, mend: string): MistakeWords => ({ what, see, mend });
const topic = (name: string, ...problems: TopicWords["problems"]): TopicWords => ({ name, problems });

const USE_LAND = "Use {perLand} {area.unit} por {oneLand.unit}.";
const USE_VOLUME = "Use {perVolume} {small.unit} por {oneVolume.unit}.";
const USE_LABEL = "Use {perLabel} {small.unit} por {oneLabel.unit}.";
const USE_BAND = "Use el ancho de la banda, no la distancia entre hileras.";
const LAND_APART = "{hectare} son unos {acres}.";
const MIXING_RULE =
  "Si la etiqueta no dice otra cosa: primero el acondicionador, luego polvos mojables, gránulos, suspensiones y emulsiones, y al final los adyuvantes.";
const FOR_ONE = "Este es el producto para {oneLand}, no para lo que de verdad se cubre.";
const COVERS_OTHER = "Vea cuánto cubre la mezcla: no es {oneLand}.";
const FOR_LAST_LOAD =
  "Multiplique el producto por {oneVolume.unit} de mezcla por la mezcla de la última carga.";
const CANOPY_SUM = "Multiplique la altura por el ancho y divida entre la distancia entre hileras.";
const TIME_SUM =
  "Multiplique el volumen para una planta por el tiempo en que se recogió y divida entre lo recogido.";
const PER_HUNDRED = "{onePercent} es 1 parte de 100: divida entre 100.";

/** What practice problems add to the Spanish table. */
const SPANISH_PRACTICE: Pick<PracticeMessages, "kinds" | "spellings" | "topics" | "mistakes" | "practice"> & {
  readonly lines: LineTable<PracticeLines>;
} = {
  lines: {
    "practice.spoons": {
      found: "número de cucharas enteras al ras",
      terms: { amount: "cantidad de producto", spoon: "una cuchara" },
    },
    "practice.product": {
      found: "producto para la parcela",
      terms: { rate: "dosis del producto", area: "área tratada" },
    },
    "practice.productOnGround": {
      found: "producto para la parcela",
      terms: { rate: "dosis del producto", area: "área del terreno" },
    },
    "practice.fertilizer": {
      found: "fertilizante para la parcela",
      terms: { rate: "fertilizante", area: "área de la parcela" },
    },
    "practice.spotMix": {
      found: "mezcla total para todos los manchones",
      terms: { spots: "número de manchones", each: "mezcla para un manchón" },
    },
    "practice.seasonLeft": {
      found: "aplicaciones que quedan",
      terms: {
        limit: "límite de la temporada",
        done: "aplicaciones hasta ahora",
        rate: "dosis de una aplicación",
      },
    },
    "practice.catchOnStrip": {
      found: "lo recogido en el tiempo de la franja",
      terms: { caught: "lo recogido", walk: "tiempo de la franja", time: "tiempo en que se recogió" },
    },
    "practice.catchMean": {
      found: "promedio de lo recogido",
      terms: { x: "lo recogido de la boquilla {n}", n: "número de boquillas" },
    },
    "practice.nozzleOff": {
      found: "diferencia con el promedio (mayor − menor)",
      terms: {
        worst: "lo recogido de la boquilla {n} (la peor)",
        mean: "promedio de lo recogido",
      },
    },
    "practice.solution": {
      found: "solución (la mezcla) que da la solución madre",
      terms: { ratio: "partes de solución por parte de solución madre", stock: "solución madre" },
    },
    "practice.lastLoad": {
      found: "mezcla en la última carga",
      terms: {
        total: "mezcla total por preparar",
        loads: "número de cargas",
        fill: "llenado del tanque",
      },
    },
    "practice.allRows": {
      found: "largo de todas las hileras",
      terms: { rows: "número de hileras", rowLength: "largo de una hilera" },
    },
    "practice.productOnRows": {
      found: "producto para las hileras",
      terms: { rate: "dosis del producto", rowLength: "largo de todas las hileras" },
    },
  },
  // Units that are printed by their signs, and words for what is printed as a sign.
  spellings: {
    "%": "por ciento,porciento",
    fl_oz: "oz fl,oz. fl.,oz líq,oz. líq.",
    s: "seg,segs",
    lb: "#",
  },
  kinds: {
    "water-conditioner": "un acondicionador de agua",
    WP: "un polvo mojable (WP)",
    WG: "gránulos dispersables en agua (WG)",
    SC: "un concentrado en suspensión (SC)",
    EC: "un concentrado emulsionable (EC)",
    adjuvant: "un adyuvante",
  },
  topics: {
    "rectangle-area": topic(
      "Área de un rectángulo",
      "Un campo de verduras en {farm} es un rectángulo de {length} de largo y {width} de ancho. ¿Cuál es su área ({unit})?",
      "Un campo deportivo en {farm} mide {length} por {width}, con esquinas rectas. ¿Cuál es su área ({unit})?",
      "En el vivero de {farm} se trata un bloque rectangular. Mide {width} de ancho y {length} de largo. ¿Qué tan grande es el bloque ({unit})?",
      "Usted mide a pasos una parte de un pastizal en {farm}. Tiene {length} de largo y {width} de ancho, con esquinas rectas. ¿Cuál es su área ({unit})?",
    ),
    "triangle-area": topic(
      "Área de un triángulo",
      "Una esquina del campo de verduras de {farm} es un triángulo. Su base mide {base}, y la esquina opuesta está a {height} de la base. ¿Cuál es su área ({unit})?",
      "Dos caminos en {farm} cortan un triángulo del huerto. Un lado mide {base}. La esquina opuesta está a {height} de ese lado, medido en ángulo recto. ¿Cuál es el área del triángulo ({unit})?",
      "El césped detrás de la empacadora de {farm} tiene tres esquinas. El lado junto a la empacadora mide {base}, y el césped llega {height} hacia atrás. ¿Cuál es su área ({unit})?",
      "Un bloque de viñedo en {farm} termina en punta. Mide {base} de ancho en el camino y {height} de fondo. ¿Qué tan grande es el bloque ({unit})?",
    ),
    "trapezoid-area": topic(
      "Área de un trapecio",
      "Una parcela en {farm} tiene dos lados paralelos, de {base} y {top}, separados {height}. ¿Cuál es el área de la parcela ({unit})?",
      "Un bloque de viñedo en {farm} se angosta cuesta arriba. Mide {base} de ancho abajo, {top} de ancho arriba, y {height} de abajo hasta arriba. ¿Cuál es su área ({unit})?",
      "La primera hilera de un huerto en {farm} mide {base} y la última mide {top}. Las hileras son paralelas, y de la primera a la última hay {height}. ¿Cuál es el área entre ellas ({unit})?",
      "La orilla de un pastizal en {farm} queda entre dos cercas paralelas, de {top} y {base} de largo, separadas {height}. ¿Cuál es su área ({unit})?",
    ),
    "timed-speed": topic(
      "Velocidad con una distancia cronometrada",
      "En {farm} usted recorre los {distance} marcados en {time}. ¿A qué velocidad avanza ({unit})?",
      "Dos estacas en el campo de verduras de {farm} están a {distance} una de otra. Usted maneja la aspersora de una a otra en {time}. ¿Cuál es su velocidad ({unit})?",
      "En el césped de {farm} la aspersora tarda {time} en {distance}. ¿Cuál es su velocidad ({unit})?",
      "Entre las hileras del viñedo de {farm} el tractor recorre {distance} en {time}. ¿Cuál es la velocidad de trabajo ({unit})?",
    ),
    "household-measure": topic(
      "Cucharas al ras, sin pasarse",
      "Una carga de mochila para las verduras de {farm} lleva {amount} de producto. Usted tiene una cuchara medidora de {spoon}. ¿Cuántas cucharas al ras se pueden poner sin pasarse?",
      "Para el invernadero de {farm} hacen falta {amount} de producto en el tanque. Su cuchara es de {spoon}. ¿Cuántas cucharas enteras al ras pone, sin pasarse?",
      "El tanque para las rosas de {farm} lleva {amount} de producto. La única medida a mano es una cuchara de {spoon}. ¿Cuántas cucharas llenas al ras puede usar como máximo?",
      "Una carga para manchones en {farm} lleva {amount} de producto. La cuchara es de {spoon}. ¿Cuántas cucharas enteras al ras se ponen sin pasarse?",
    ),
    "percent-mix": topic(
      "Porcentaje de la mezcla",
      "La etiqueta pide {percent} de un aditivo en la mezcla. ¿Cuánto lleva un tanque de {fill} en {farm} ({unit})?",
      "Usted trata las camas del vivero de {farm}. La etiqueta dice que agregue {percent} de un esparcidor. El tanque se llena hasta {fill}. ¿Cuánto esparcidor es ({unit})?",
      "Para el huerto de {farm} se preparan {fill} de mezcla con {percent} de aceite. ¿Cuánto aceite se mide ({unit})?",
      "La aspersora del invernadero de {farm} es de {fill}. La etiqueta pide {percent} de producto en la mezcla final. ¿Cuánto producto lleva ({unit})?",
    ),
    "strip-reading": topic(
      "Volumen de aplicación leído de lo recogido",
      "En {farm} usted marca una franja en la que lo recogido de una boquilla ({caught.unit}) es el mismo número que el volumen de aplicación ({unit}). Caminarla lleva {walk}. Sin caminar, usted recoge {caught} de una boquilla en {time}. ¿Cuál es el volumen de aplicación ({unit})?",
      "En el huerto de {farm} usted marca una franja en la que lo recogido de una boquilla ({caught.unit}) es el mismo número que el volumen de aplicación ({unit}). El tractor la recorre en {walk}. Con el tractor parado, una boquilla da {caught} en {time}. ¿Cuál es el volumen de aplicación?",
      "En el césped de {farm} usted mide una franja en la que lo recogido de una boquilla ({caught.unit}) es el mismo número que el volumen de aplicación ({unit}). Usted la camina en {walk}. De una boquilla recoge {caught} en {time}. ¿Cuál es el volumen de aplicación?",
      "En el campo de verduras de {farm} usted tarda {walk} en una franja marcada. En ella, lo recogido de una boquilla ({caught.unit}) es el mismo número que el volumen de aplicación ({unit}). En el patio recoge {caught} de una boquilla en {time}. ¿Cuál es el volumen de aplicación?",
    ),
    "season-limit": topic(
      "El límite de la temporada",
      "La etiqueta de un producto usado en {farm} permite {limit} por temporada. Ya hubo {done} {done:one=aplicación;other=aplicaciones} de {rate}. ¿Cuántas más se permiten con esta dosis?",
      "En el huerto de {farm} un producto se aplicó {done} {done:one=vez;other=veces} a {rate}. El límite de la temporada es {limit}. ¿Cuántas veces más se puede aplicar con esta dosis?",
      "Un viñedo en {farm} puede recibir {limit} de un producto por temporada. Ya recibió {done} {done:one=aplicación;other=aplicaciones} de {rate}. ¿Cuántas aplicaciones más permite la etiqueta con esta dosis?",
      "El invernadero de {farm} lleva un registro: {done} {done:one=aplicación;other=aplicaciones} hasta ahora, de {rate} cada una. El límite de la etiqueta por temporada es {limit}. ¿Cuántas aplicaciones más quedan con esta dosis?",
    ),
    "mixing-order": topic(
      "Orden de mezcla",
      "En {farm} van estos en un mismo tanque: {products}. La etiqueta no da otro orden. Escriba las letras en el orden en que se agregan.",
      "Para las verduras de {farm} se mezclan {products}. La etiqueta no da otro orden. Ponga las letras en el orden en que los productos van al agua.",
      "La aspersora del huerto de {farm} está llena de agua hasta la mitad. Faltan {products}. La etiqueta no da otro orden. Escriba las letras de la primera a la última.",
      "Un ayudante en {farm} puso en la mesa {products}. La etiqueta no da otro orden. Escriba las letras en el orden de mezcla.",
    ),
    "strip-calibration": topic(
      "Volumen de aplicación con una franja de prueba",
      "En una franja de prueba de {distance} en {farm}, tratada a {swath} de ancho, la aspersora usó {used} de agua. ¿Cuál es el volumen de aplicación ({unit})?",
      "Usted calibra una aspersora de mochila para las verduras de {farm}. Camina {distance}, aplica una banda de {swath} de ancho y necesita {used} de agua para volver a la marca. ¿Cuál es el volumen de aplicación ({unit})?",
      "En el viñedo de {farm} se aplica una franja bajo las vides, de {distance} de largo y {swath} de ancho. Para volver a la marca hacen falta {used}. ¿Cuál es el volumen de aplicación ({unit})?",
      "En el césped de {farm} la aspersión cubre {swath} de ancho. Después de {distance} hacen falta {used} para volver a llenar la aspersora. ¿Cuál es el volumen de aplicación ({unit})?",
    ),
    "catch-calibration": topic(
      "Volumen de aplicación con una boquilla",
      "Una boquilla del aguilón de {farm} descarga {caught} de agua en {time}. Las boquillas están a {width} una de otra, y la aspersora avanza a {speed}. ¿Cuál es el volumen de aplicación ({unit})?",
      "Usted pone una jarra bajo una boquilla en {farm} durante {time} y recoge {caught}. La distancia entre boquillas es {width} y el tractor avanza a {speed}. ¿Cuál es el volumen de aplicación ({unit})?",
      "La aspersora de césped de {farm} avanza a {speed}. Sus boquillas están a {width} una de otra, y cada una da {caught} en {time}. ¿Cuál es el volumen de aplicación ({unit})?",
      "En el campo de verduras de {farm} cada boquilla cubre {width}. En {time} descarga {caught}. La velocidad de trabajo es {speed}. ¿Cuál es el volumen de aplicación ({unit})?",
    ),
    "boom-catch": topic(
      "Volumen de aplicación con varias boquillas",
      "Bajo un aguilón en {farm} las boquillas dan {catches} de agua en {time}. Están a {width} una de otra, y la aspersora avanza a {speed}. ¿Cuál es el volumen de aplicación del aguilón ({unit})?",
      "Usted recoge {catches} de las boquillas de la aspersora de césped de {farm}, cada una durante {time}. La distancia entre boquillas es {width} y la velocidad {speed}. ¿Cuál es el volumen de aplicación ({unit})?",
      "La aspersora de verduras de {farm} avanza a {speed}. Sus boquillas están a {width} una de otra y dan {catches} en {time}. ¿Cuál es el volumen de aplicación ({unit})?",
      "Para la orilla del pastizal de {farm} usted revisa cada boquilla del aguilón. En {time} recoge {catches}. Las boquillas están a {width} una de otra, y usted avanza a {speed}. ¿Cuál es el volumen de aplicación ({unit})?",
    ),
    "nozzle-check": {
      ...topic(
        "Revisión de boquillas",
        "Las boquillas de un aguilón en {farm} dan {catches} en el mismo tiempo. ¿Cuánto se aparta del promedio la peor, en porcentaje del promedio? Escríbalo sin signo.",
        "Usted revisa la aspersora de césped de {farm} y recoge {catches} en el mismo tiempo. Busque la boquilla que más se aparta del promedio. ¿Cuánto se aparta, en porcentaje del promedio y sin signo?",
        "En {farm} las boquillas sobre las verduras dan {catches} en un minuto. Una de ellas es la que más se aparta del promedio. ¿Cuánto se aparta, en porcentaje del promedio? No escriba signo.",
        "En el mismo tiempo usted recoge {catches} de las boquillas de una aspersora en {farm}. ¿Cuál es la mayor diferencia con el promedio, en porcentaje del promedio y sin signo?",
      ),
      note: "La boquilla {nozzle} es la que más se aparta: dio {caught}, y el promedio es {average}.",
    },
    "tank-loads": topic(
      "Cuántas cargas",
      "De un campo de {ground} en {farm} se trata un área de {area}. El volumen de aplicación es {rate}, y el tanque se llena hasta {fill}. ¿Cuántas cargas lleva el trabajo?",
      "El huerto de {farm} mide {ground}. Solo se tratan las franjas bajo los árboles, {area} en total. La aspersora aplica {rate}, y una carga es de {fill}. ¿Cuántas cargas prepara usted?",
      "Un viñedo en {farm} mide {ground}, y se trata un área de {area}. El volumen de aplicación es {rate}, y el tanque lleno tiene {fill}. ¿Cuántas cargas se preparan?",
      "En {farm} los cardos cubren {area} de un pastizal de {ground}. Solo se tratan los cardos, a {rate}, con cargas de {fill}. ¿Cuántas cargas son?",
    ),
    "lawn-rate": topic(
      "Dosis para un césped",
      "Un césped en {farm} mide {length} de largo y {width} de ancho. La dosis de la etiqueta es {rate}. ¿Cuánto producto necesita el césped ({unit})?",
      "Una parte del campo deportivo de {farm} mide {length} por {width}. La dosis de la etiqueta es {rate}. ¿Cuánto producto es ({unit})?",
      "En el vivero de {farm} se trata un bloque de {length} por {width}, a {rate}. ¿Cuánto producto se mide ({unit})?",
      "El piso del invernadero de {farm} mide {width} de ancho y {length} de largo. La etiqueta permite {rate}. ¿Cuánto producto se puede usar en él ({unit})?",
    ),
    granules: topic(
      "Gránulos",
      "Se ponen gránulos en un césped de {length} por {width} en {farm}. La dosis de la etiqueta es {rate}. ¿Cuánto se pesa ({unit})?",
      "Un bloque del vivero de {farm} mide {length} de largo y {width} de ancho. Recibe gránulos a {rate}. ¿Qué peso de gránulos lleva ({unit})?",
      "En {farm} usted esparce gránulos en el césped junto a la casa club, de {width} de ancho y {length} de largo, a {rate}. ¿Cuánto hace falta ({unit})?",
      "Una parcela de verduras de {length} por {width} en {farm} recibe gránulos a {rate}. ¿Cuánto se pone en la esparcidora ({unit})?",
    ),
    fertilizer: topic(
      "Fertilizante para un nutriente",
      "Un análisis de suelo en {farm} pide nitrógeno a {needed} en {area} de césped. El saco dice {nitrogen}-0-0. ¿Cuánto fertilizante necesita el césped ({unit})?",
      "Las verduras de {farm} necesitan nitrógeno a {needed}. El saco de fertilizante dice {nitrogen}-0-0, y la parcela mide {area}. ¿Cuánto se pesa ({unit})?",
      "En {area} de césped en {farm} usted pone nitrógeno a {needed} con un saco de {nitrogen}-0-0. ¿Cuánto se pone en la esparcidora ({unit})?",
      "El vivero de {farm} abona {area} con nitrógeno a {needed}. El primer número del saco es {nitrogen}. ¿Cuánto fertilizante es ({unit})?",
    ),
    "row-length": topic(
      "Dosis por largo de hilera",
      "En {farm} hay {rows} hileras de repollo, cada una de {rowLength} de largo. La dosis de la etiqueta es {rate} de hilera. ¿Cuánto producto necesitan todas las hileras ({unit})?",
      "Usted riega trasplantes en {rows} hileras en {farm}. Cada hilera mide {rowLength} de largo, y la etiqueta dice {rate} de hilera. ¿Cuánto producto se mide ({unit})?",
      "Las hileras de {farm} se riegan con producto, a {rate} de hilera. Hay {rows}, cada una de {rowLength} de largo. ¿Cuánto producto hace falta ({unit})?",
      "Una etiqueta permite {rate} de hilera. Las fresas de {farm} están en {rows} hileras de {rowLength}. ¿Cuánto producto se puede usar en ellas ({unit})?",
    ),
    "dry-product": topic(
      "Producto seco",
      "En {area} de verduras en {farm} se aplica un polvo mojable a {rate}. ¿Cuánto polvo se pesa ({unit})?",
      "El bloque de viñedo de {farm} tiene {area} por tratar. La dosis de la etiqueta de un producto seco es {rate}. ¿Cuánto hace falta ({unit})?",
      "Un huerto en {farm} recibe {rate} de un polvo en {area}. ¿Cuánto se pone en la báscula ({unit})?",
      "En el vivero de {farm} se trata un área de {area} con gránulos dispersables en agua, a {rate}. ¿Cuánto se pesa ({unit})?",
    ),
    "product-per-tank": topic(
      "Producto en un tanque lleno",
      "La dosis de la etiqueta es {rate}. La aspersora de {farm} aplica {carrierRate}, y su tanque se llena hasta {fill}. El producto pesa {density}. ¿Cuánto producto se pone en el agua para un tanque lleno ({unit})?",
      "Para las verduras de {farm} usted calibró la aspersora a {carrierRate}. La etiqueta dice {rate} de un líquido que pesa {density}. ¿Cuánto se pone en {fill} de mezcla ({unit})?",
      "En el huerto de {farm} una aspersora tiene un tanque de {fill} y aplica {carrierRate}. La dosis de la etiqueta es {rate}, y el producto pesa {density}. ¿Cuánto producto lleva un tanque lleno ({unit})?",
      "En el césped de {farm} se aplican {carrierRate}. El producto pesa {density}, y la dosis de la etiqueta es {rate}. ¿Cuánto producto llevan {fill} de mezcla ({unit})?",
    ),
    "plant-timing": topic(
      "Segundos por planta",
      "La pistola de {farm} llena una cubeta con {caught} en {time}. Cada árbol debe recibir {each} de mezcla. ¿Cuánto tiempo se trata cada árbol ({unit})?",
      "En el invernadero de {farm} la lanza da {caught} en {time}. Cada maceta recibe {each}. ¿Cuánto tiempo se riega cada maceta ({unit})?",
      "Usted prueba la lanza con agua en {farm}: {caught} en {time}. Cada zarza de la cerca lleva {each} de mezcla. ¿Cuánto tiempo se trata cada una ({unit})?",
      "En el viñedo de {farm} cada cepa recibe {each} al pie. De la pistola usted recoge {caught} en {time}. ¿Cuánto tiempo se queda usted en cada cepa ({unit})?",
    ),
    "spot-tank": topic(
      "Manchones, en porcentaje",
      "En un pastizal de {farm} usted trata {spots} cardos, cada uno con {each} de mezcla. La etiqueta pide {percent} de producto en la mezcla. ¿Cuánto producto hace falta ({unit})?",
      "Junto a la cerca del huerto de {farm} hay {spots} zarzas. Cada una lleva {each} de una mezcla al {percent}. ¿Cuánto producto se pone en la aspersora de manchones ({unit})?",
      "En el césped de {farm} se tratan {spots} manchones, con {each} de mezcla por manchón y {percent} de producto en ella. ¿Cuánto producto llevan todos ({unit})?",
      "La orilla del viñedo de {farm} tiene {spots} ortigas por tratar una a una. Usted calcula {each} de mezcla para cada una. La etiqueta dice {percent}. ¿Cuánto producto se mide ({unit})?",
    ),
    dilution: topic(
      "Diluir un concentrado",
      "Un limpiador de aspersoras se vende a una concentración de {from}. Usted necesita {volume} al {to}. ¿Cuánto limpiador se agrega al agua ({unit})?",
      "El invernadero de {farm} desinfecta sus mesas con {volume} de una solución al {to}. El concentrado es de {from}. ¿Cuánto concentrado hace falta ({unit})?",
      "Para limpiar tijeras de podar, el vivero de {farm} prepara {volume} de una solución al {to} con un concentrado de {from}. ¿Cuánto concentrado lleva ({unit})?",
      "Las cajas de {farm} se lavan en {volume} de una solución al {to}. El tambor dice {from}. ¿Cuánto se toma del tambor ({unit})?",
    ),
    injector: topic(
      "Inyector de proporción",
      "Un inyector en el invernadero de {farm} hace {ratio} partes de solución con 1 parte de solución madre. La etiqueta pide {rate} en la solución. ¿Cuánto producto se pone en {stock} de solución madre ({unit})?",
      "El vivero de {farm} riega con un inyector puesto a 1:{ratio}, una parte de solución madre en {ratio} partes de solución. Las plantas necesitan {rate}. ¿Cuánto producto se pone en {stock} de solución madre ({unit})?",
      "En {farm} el inyector de las fresas saca {ratio} partes de solución de 1 parte de solución madre. La solución debe tener {rate}. ¿Cuánto producto se pone en {stock} de solución madre ({unit})?",
      "El tanque de solución madre de un inyector en {farm} se llena con {stock}. Cada parte da {ratio} partes de solución, y la dosis de la etiqueta es {rate} de solución. ¿Cuánto producto va en el tanque ({unit})?",
    ),
    reserve: topic(
      "Mezcla extra",
      "En {area} de verduras en {farm} se aplican {carrierRate}, y se prepara {extra} de mezcla extra. La dosis de la etiqueta es {rate}. ¿Cuánto producto lleva toda la mezcla ({unit})?",
      "La aspersora del huerto de {farm} aplica {carrierRate} en {area}. Por seguridad usted prepara {extra} de mezcla extra. La dosis de la etiqueta es {rate}. ¿Cuánto producto necesita toda la mezcla ({unit})?",
      "En un viñedo de {area} en {farm} se aplican {carrierRate}. Usted prepara {extra} de mezcla extra. La etiqueta dice {rate}. ¿Cuánto producto lleva toda la mezcla ({unit})?",
      "En el césped de {farm} se trata un área de {area} con {carrierRate}. Usted prepara {extra} de mezcla extra, tan fuerte como el resto. La dosis de la etiqueta es {rate}. ¿Cuánto producto lleva toda la mezcla ({unit})?",
    ),
    "tree-row-volume": topic(
      "Volumen de copa",
      "Los manzanos de {farm} miden {height} de alto y {width} de ancho, en hileras separadas {rowSpacing}. Se mojan con {spray} de copa. ¿Cuánta mezcla es por área de huerto ({unit})?",
      "En un huerto de {farm} las hileras están a {rowSpacing} una de otra. La copa tiene {height} de abajo arriba y {width} de ancho. Con {spray} de copa las hojas empiezan a gotear. ¿Cuánta mezcla diluida lleva el huerto ({unit})?",
      "Los cerezos de {farm} forman un seto de {height} de alto y {width} de ancho, con {rowSpacing} entre hileras. La mezcla es {spray} de copa. ¿Cuál es el volumen diluido ({unit})?",
      "Un bloque de perales de {farm} tiene hileras cada {rowSpacing}. La copa mide {width} de ancho y {height} de alto. Se calcula con {spray} de copa. ¿Cuánta mezcla es por área de tierra ({unit})?",
    ),
    band: topic(
      "Producto para bandas en hileras",
      "En {farm} hay {rows} hileras de verduras, de {rowLength} de largo y a {rowSpacing} una de otra. Cada una se trata en una banda de {bandWidth}. La dosis de la etiqueta es {rate} de área tratada. ¿Cuánto producto necesitan todas las hileras ({unit})?",
      "Un campo de moras en {farm} tiene {rows} hileras de {rowLength}, a {rowSpacing} una de otra. En cada hilera se aplica una banda de {bandWidth}. La dosis de la etiqueta es {rate} de área tratada. ¿Cuánto producto es ({unit})?",
      "En el viñedo de {farm} se aplica una banda de {bandWidth} bajo cada una de {rows} hileras. Las hileras miden {rowLength} y están a {rowSpacing} una de otra, y la etiqueta permite {rate} de área tratada. ¿Cuánto producto hace falta ({unit})?",
      "El vivero de {farm} trata {rows} hileras de árboles jóvenes. Cada hilera mide {rowLength} y recibe una banda de {bandWidth}. Las hileras están a {rowSpacing} una de otra. La dosis de la etiqueta es {rate} de área tratada. ¿Cuánto producto lleva el trabajo ({unit})?",
    ),
    "whole-job": topic(
      "El trabajo completo",
      "En {farm} hay {rows} hileras, de {rowLength} de largo y a {rowSpacing} una de otra. Cada una se trata en una banda de {bandWidth}. En una franja de prueba de {distance}, con la misma banda, la aspersora usó {used} de agua. El tanque se llena hasta {fill}: primero tanques llenos y al final una carga con el resto. La dosis de la etiqueta es {rate} de área tratada. ¿Cuánto producto lleva la última carga ({unit})?",
      "Usted aplica una banda de {bandWidth} en cada una de {rows} hileras de arbustos en {farm}. Las hileras miden {rowLength} y están a {rowSpacing} una de otra. Al caminar una franja de prueba de {distance} se usaron {used} de agua en esa banda. Se preparan tanques llenos de {fill} y al final una carga con lo que falta. La dosis de la etiqueta es {rate} de área tratada. ¿Cuánto producto lleva la última carga ({unit})?",
      "El viñedo de {farm} tiene {rows} hileras de {rowLength}, a {rowSpacing} una de otra. Bajo cada una se aplica una banda de {bandWidth}. En una franja de prueba de {distance}, con esa banda, la aspersora usó {used} de agua. Se preparan tanques llenos de {fill} y al final una carga con el resto. La dosis de la etiqueta es {rate} de área tratada. ¿Cuánto producto recibe la última carga ({unit})?",
      "En {farm} se planean {rows} hileras de moras, de {rowLength} cada una, a {rowSpacing} una de otra, con una banda tratada de {bandWidth}. Su franja de prueba de {distance} en esa banda llevó {used} de agua. El tanque se llena hasta {fill} todas las veces que se pueda, y el resto se prepara como última carga. La etiqueta dice {rate} de área tratada. ¿Cuánto producto es para la última carga ({unit})?",
    ),
  },
  mistakes: {
    "sides-added": mistake(
      "Se sumaron el largo y el ancho en vez de multiplicarlos.",
      "Una suma de largos es un largo. Un área se mide en cuadrados.",
      "Multiplique los dos lados.",
    ),
    "base-and-height-added": mistake(
      "Se sumaron la base y la altura en vez de multiplicarlas.",
      "Una suma de largos es un largo. Un área se mide en cuadrados.",
      "Multiplique la base por la altura y divida entre 2.",
    ),
    "perimeter-taken": mistake(
      "Esta es la distancia alrededor de la parcela, no su área.",
      "Caminar alrededor de una parcela no cubre el terreno de adentro.",
      "Multiplique el largo por el ancho.",
    ),
    halved: mistake(
      "El área se cortó a la mitad, como en un triángulo.",
      "Dibuje la parcela. Todo el rectángulo es parte de ella.",
      "No divida entre 2: un rectángulo es largo por ancho.",
    ),
    "not-halved": mistake(
      "Faltó dividir entre dos: este es el rectángulo alrededor del triángulo.",
      "Dibuje la parcela dentro de un rectángulo. Llena la mitad.",
      "Divida base por altura entre 2.",
    ),
    "halved-twice": mistake(
      "El área se dividió entre 2 dos veces.",
      "Dibuje la parcela dentro de un rectángulo. Llena la mitad, no la cuarta parte.",
      "Divida base por altura entre 2 una sola vez.",
    ),
    "mean-not-taken": mistake(
      "Los dos lados paralelos se sumaron, pero no se promediaron.",
      "La parcela sería más grande que un rectángulo sobre su lado más largo.",
      "Sume los dos lados paralelos y divida entre 2 antes de multiplicar.",
    ),
    "long-side-only": mistake(
      "Solo se usó el más largo de los dos lados paralelos.",
      "Dibuje el rectángulo sobre el lado más largo. La parcela no lo llena.",
      "Use el promedio de los dos lados paralelos.",
    ),
    "short-side-only": mistake(
      "Solo se usó el más corto de los dos lados paralelos.",
      "Dibuje el rectángulo sobre el lado más corto. La parcela se sale de él.",
      "Use el promedio de los dos lados paralelos.",
    ),
    "all-multiplied": mistake(
      "Se multiplicaron las tres medidas.",
      "Tres largos multiplicados dan un volumen, no un área.",
      "Multiplique el promedio de los lados paralelos por la distancia entre ellos.",
    ),
    "land-unit-left": mistake(
      "El área se quedó en {area.unit}.",
      "El número difiere en un factor de {perLand}.",
      "Hay {perLand} {area.unit} en {oneLand}. Cambie la unidad.",
    ),
    "wrong-land-factor": mistake(
      "Se usó un número equivocado para pasar de {area.unit} a {land.unit}.",
      "Compare la parcela con una que conozca.",
      "Hay {perLand} {area.unit} en {oneLand}.",
    ),
    "land-factor-inverted": mistake(
      "El factor entre {area.unit} y {land.unit} se usó al revés.",
      "En {oneLand} cabe mucho terreno, así que una parcela es solo una parte o unas cuantas veces eso.",
      "Divida {area.unit} entre {perLand} para pasar a {land.unit}.",
    ),
    "other-land-unit": mistake("Esta respuesta usa {otherLand.unit}, no {land.unit}.", LAND_APART, USE_LAND),
    "land-unit-from-other": mistake(
      "El área en {area.unit} se dividió entre el número de otra unidad de terreno.",
      "Escriba las unidades junto a los números. No se cancelan.",
      "Divida {area.unit} entre {perLand} para pasar a {land.unit}.",
    ),
    inverted: mistake(
      "En un paso se multiplicó en vez de dividir, o al revés.",
      "El número está lejos de una estimación con números redondos.",
      "Escriba las unidades junto a los números. Solo debe quedar la unidad de la respuesta.",
    ),
    "fraction-inverted": mistake(
      "La fracción se puso al revés.",
      "El número está lejos de una estimación con números redondos.",
      "Intercambie los dos números de la división.",
    ),
    "rate-inverted": mistake(
      "La fracción se puso al revés.",
      "Escriba las unidades junto a los números. También salen al revés.",
      "Ponga arriba el volumen y abajo el área.",
    ),
    multiplied: mistake(
      "La cantidad se multiplicó por el área en vez de dividirse entre ella.",
      "La misma cantidad en una franja más larga debe dar menos por área.",
      "El volumen de aplicación es una cantidad por área: divida.",
    ),
    "divided-by-area": mistake(
      "La dosis se dividió entre el área en vez de multiplicarse por ella.",
      "Un área más grande debe llevar más producto.",
      "Multiplique la dosis por el área.",
    ),
    "small-unit-as-large": mistake(
      "La cantidad en {small.unit} se usó como si fueran {volume.unit}.",
      "El resultado es {perVolume} veces más alto de lo debido: nadie aplica tanto.",
      "Divida entre {perVolume} para pasar de {small.unit} a {volume.unit}.",
    ),
    "volume-factor-inverted": mistake(
      "La cantidad en {small.unit} se multiplicó por {perVolume} en vez de dividirse.",
      "El número creció, pero {oneVolume} es más que {oneSmall}: debe bajar.",
      "Divida entre {perVolume} para pasar de {small.unit} a {volume.unit}.",
    ),
    "volume-unit-left": mistake(
      "La cantidad se quedó en {volume.unit}.",
      "El número es {perVolume} veces más chico de lo debido.",
      "Multiplique por {perVolume} para pasar de {volume.unit} a {small.unit}.",
    ),
    "label-unit-left": mistake(
      "La cantidad se quedó en {label.unit}, la unidad de la dosis.",
      "La pregunta pide {small.unit}.",
      "Multiplique por {perLabel}: en {oneLabel} hay {perLabel} {small.unit}.",
    ),
    "other-gallon": mistake(
      "Se usó el galón del otro sistema: el de Estados Unidos tiene 128 onzas líquidas, el imperial 160.",
      "La respuesta es un cuarto más grande o un quinto más chica de lo debido.",
      USE_VOLUME,
    ),
    "pint-for-gallon": mistake(
      "Un galón se tomó como una pinta.",
      "La cantidad es 8 veces más chica de lo debido.",
      USE_VOLUME,
    ),
    "pint-of-8": mistake(
      "Una pinta se tomó como 8 {small.unit}.",
      "8 onzas líquidas de Estados Unidos son una taza, no una pinta.",
      USE_LABEL,
    ),
    "pint-of-other-system": mistake(
      "Se usó la pinta del otro sistema: la de Estados Unidos tiene 16 onzas líquidas, la imperial 20.",
      "Las pintas y las onzas líquidas deben ser de un mismo sistema.",
      USE_LABEL,
    ),
    "pint-of-32": mistake(
      "Una pinta se tomó como 32 {small.unit}.",
      "32 onzas líquidas de Estados Unidos son un cuarto de galón, no una pinta.",
      USE_LABEL,
    ),
    "liter-of-100": mistake(
      "Un litro se tomó como 100 mL.",
      "La cantidad es 10 veces más chica de lo debido.",
      USE_LABEL,
    ),
    "width-in-small-unit": mistake(
      "El ancho no se convirtió ({width.unit} a {length.unit}).",
      "El ancho es {perLength} veces más grande de lo debido.",
      "Divida el ancho entre {perLength} ({width.unit} a {length.unit}).",
    ),
    "width-left-out": mistake(
      "Faltó el ancho.",
      "La misma cantidad en una franja más ancha debe dar menos por área.",
      "Multiplique la distancia por el ancho para tener el área.",
    ),
    "width-in-large-unit": mistake(
      "El ancho se convirtió ({width.unit} a {length.unit}) y se usó en la fórmula con {widthFormula}.",
      "El volumen es {perLength} veces más alto de lo debido.",
      "La fórmula con {widthFormula} pide el ancho como está ({width.unit}); el cálculo de aquí lo pide convertido ({length.unit}). No mezcle los dos.",
    ),
    "factors-left-out": mistake(
      "Faltaron los factores entre las unidades.",
      "El volumen es demasiado bajo para una aspersora.",
      "Pase volumen, tiempo y área a las unidades de la pregunta.",
    ),
    "time-taken-as-minute": mistake(
      "El tiempo se tomó como un minuto.",
      "Vea el tiempo: fue menos o más de 60 segundos.",
      "Use el tiempo que de verdad pasó.",
    ),
    "seconds-as-minutes": mistake(
      "Los segundos se usaron como minutos.",
      "El resultado es 60 veces más bajo de lo debido.",
      "Divida los segundos entre 60 para pasar a minutos.",
    ),
    "speed-in-other-unit": mistake(
      "La velocidad en {speed.unit} se usó como si fueran {length.unit} por segundo.",
      "A paso normal se camina a más o menos {walking}: {walkingPerSecond} {length.unit} por segundo.",
      "Pase primero la velocidad a {length.unit} por segundo.",
    ),
    "rounded-down": mistake(
      "Faltó la carga parcial.",
      "Una parte de la parcela quedaría sin tratar.",
      "Redondee hacia arriba: la última carga es parcial.",
    ),
    "loads-unrounded": mistake(
      "El número de cargas no se redondeó.",
      "Una carga parcial también es una carga: hay que llenar el tanque otra vez.",
      "Redondee hacia arriba a un número entero.",
    ),
    "ground-for-area": mistake(
      "Se contó todo el campo en vez de solo lo que se trata.",
      "Sobraría mezcla.",
      "Use el área que se trata.",
    ),
    "area-left-out": mistake(
      "Faltó el área.",
      "Un campo del doble debe llevar el doble de mezcla.",
      "Multiplique primero el volumen de aplicación por el área.",
    ),
    "total-for-count": mistake(
      "Esta es la mezcla total, no el número de cargas.",
      "La pregunta es cuántas cargas se preparan.",
      "Divida la mezcla total entre el volumen de cada llenado y redondee hacia arriba.",
    ),
    "unscaled-product": mistake(
      FOR_ONE,
      "Vea cuánto mide el área tratada: no es {oneLand}.",
      "Multiplique la dosis por el área tratada.",
    ),
    "unscaled-tank": mistake(
      FOR_ONE,
      COVERS_OTHER,
      "Multiplique el producto por {oneVolume.unit} de mezcla por el llenado del tanque.",
    ),
    "unscaled-reserve": mistake(
      FOR_ONE,
      COVERS_OTHER,
      "Multiplique el producto por {oneVolume.unit} de mezcla por toda la mezcla, también la mezcla extra.",
    ),
    "unscaled-last-load": mistake(FOR_ONE, COVERS_OTHER, FOR_LAST_LOAD),
    "rate-per-volume": mistake(
      "La dosis por {oneLand.unit} se usó como dosis por {oneVolume.unit} de mezcla.",
      "La mezcla quedaría demasiado fuerte.",
      "Divida primero la dosis de la etiqueta entre el volumen de aplicación: es el producto por {oneVolume.unit} de mezcla.",
    ),
    "per-lawn-for-land": mistake(
      "La dosis por {oneLand.unit} se usó como dosis por {oneLawn.unit}.",
      "La cantidad es demasiado grande.",
      "Lea por cuánta área es la dosis, y use esa área.",
    ),
    "rate-per-other-land": mistake(
      "La dosis se usó como si fuera por {oneOtherLand.unit}.",
      LAND_APART,
      "La dosis es por {oneLand.unit}. Déjela por {oneLand.unit}.",
    ),
    "weighed-as-volume": mistake(
      "Ese número de onzas líquidas (mililitros) se pesó como onzas (gramos).",
      "Una báscula muestra peso. La dosis es un volumen.",
      "Mida un líquido con jarra o cuchara, no con báscula.",
    ),
    "weighed-as-water": mistake(
      "El producto se pesó como si pesara lo mismo que el agua.",
      "El agua pesa {water}. Este producto no pesa lo mismo.",
      "Mida un líquido por volumen.",
    ),
    "weight-for-volume": mistake(
      "Esto es lo que pesa el producto, no su volumen.",
      "La pregunta pide un volumen. Lo que pesa el producto no hace falta.",
      "No use el peso.",
    ),
    "rounded-early": mistake(
      "Se redondeó un paso intermedio, y el resto del cálculo arrastró el error.",
      "Calcúlelo otra vez con todas las cifras. El resultado cambia.",
      "Redondee una sola vez, al final.",
    ),
    "dose-rounded-up": mistake(
      "La dosis se redondeó hacia arriba: es demasiado producto.",
      "Compárela con la respuesta exacta: es más.",
      "Una cantidad de producto se redondea siempre hacia abajo.",
    ),
    "rounded-up": mistake(
      "La última cuchara se redondeó hacia arriba: pasa de la cantidad.",
      "Convierta las cucharas otra vez a la cantidad: es demasiado.",
      "Redondee hacia abajo. La parte que sobra se deja o se mide con una cuchara más chica.",
    ),
    "spoons-unrounded": mistake(
      "El número de cucharas no se redondeó.",
      "Nadie puede medir una parte así de una cuchara.",
      "Redondee hacia abajo a cucharas enteras al ras.",
    ),
    "tablespoon-for-teaspoon": mistake(
      "Se contaron cucharadas en vez de cucharaditas.",
      "En una cucharada caben 3 cucharaditas, así que van menos.",
      "Vea qué cuchara dice la pregunta.",
    ),
    "teaspoon-for-tablespoon": mistake(
      "Se contaron cucharaditas en vez de cucharadas.",
      "Con cucharadas esto sería cerca del triple de la dosis.",
      "Vea qué cuchara dice la pregunta.",
    ),
    "ground-for-treated": mistake(
      "También se contó el terreno entre las bandas.",
      "Se pondría producto para terreno que no se trata.",
      USE_BAND,
    ),
    "ground-for-treated-loads": mistake(
      "También se contó el terreno entre las bandas. Eso cambia cuántas cargas hay y cuánto lleva la última.",
      "El trabajo llevaría más mezcla de la que necesitan las hileras.",
      USE_BAND,
    ),
    "one-row-too-few": mistake(
      "Se contaron los espacios entre las hileras en vez de las hileras.",
      "Dibuje las hileras: hay una hilera más que espacios.",
      "Cuente las hileras.",
    ),
    "one-row-only": mistake(
      "Solo se contó una hilera.",
      "La cantidad no pasaría de la primera hilera.",
      "Multiplique por el número de hileras.",
    ),
    "length-and-spacing": mistake(
      "Se usó la distancia entre hileras en vez del largo de la hilera.",
      "El área es demasiado chica.",
      "Multiplique el largo de la hilera por el ancho de la banda.",
    ),
    "percent-as-part": mistake(
      "El porcentaje no se dividió entre 100.",
      "La cantidad es 100 veces más grande de lo debido.",
      PER_HUNDRED,
    ),
    "final-percent-only": mistake(
      "El porcentaje final no se dividió entre 100, y faltó la concentración del producto.",
      "El número está lejos de una estimación con números redondos.",
      "Divida el porcentaje final entre el porcentaje del concentrado.",
    ),
    "per-mille": mistake(
      "El porcentaje se dividió entre {thousand}.",
      "La cantidad es 10 veces más chica de lo debido.",
      PER_HUNDRED,
    ),
    "one-unit-only": mistake(
      "Esta es la cantidad para solo {oneVolume} de mezcla.",
      "En el tanque cabe más de {oneVolume}.",
      "Multiplique por el volumen del tanque lleno.",
    ),
    "parts-of-water": mistake(
      "El concentrado se tomó en proporción al agua, no a toda la mezcla.",
      "La mezcla quedaría demasiado débil.",
      "Divida la concentración final entre la del concentrado: esa es su parte de toda la mezcla.",
    ),
    "took-the-water": mistake(
      "Esta es el agua que se agrega.",
      "La pregunta pide lo que se pone en el agua.",
      "Reste el agua de la mezcla final.",
    ),
    "strength-ignored": mistake(
      "No se tomó en cuenta la concentración del producto, como si fuera puro.",
      "La mezcla quedaría demasiado débil.",
      "Divida entre la concentración del producto.",
    ),
    "strengths-subtracted": mistake(
      "Se usó la diferencia de las concentraciones en vez de la que se quiere preparar.",
      "Haga la mezcla en la mente: la concentración no sale.",
      "Divida la concentración que se quiere entre la del producto.",
    ),
    "strengths-swapped": mistake(
      "Las dos concentraciones se usaron al revés.",
      "Es más que toda la mezcla.",
      "Divida la concentración que se quiere entre la del producto.",
    ),
    "full-tank-dose": mistake(
      "La última carga recibió el producto de un tanque lleno.",
      "La última carga es más chica, así que la mezcla quedaría demasiado fuerte.",
      FOR_LAST_LOAD,
    ),
    "all-in-last-load": mistake(
      "Este es el producto para todo el trabajo.",
      "Los tanques llenos también necesitan producto.",
      FOR_LAST_LOAD,
    ),
    "equal-loads": mistake(
      "El producto se repartió por igual entre las cargas.",
      "Las cargas no son iguales: la última es lo que queda.",
      "Reste primero los tanques llenos, y calcule después la última carga.",
    ),
    "per-second-left": mistake(
      "La velocidad se quedó en {length.unit} por segundo.",
      "La pregunta pide {speed.unit}.",
      "Cambie la unidad: {oneSpeed} son unos {perSecond} {length.unit} por segundo.",
    ),
    "speed-factor-inverted": mistake(
      "El factor entre las dos unidades de velocidad se usó al revés.",
      "Compárela con el paso normal, más o menos {walking}.",
      "{oneSpeed} son unos {perSecond} {length.unit} por segundo.",
    ),
    "speed-inverted": mistake(
      "El tiempo se dividió entre la distancia.",
      "Las unidades salen como un tiempo por distancia.",
      "Divida la distancia entre el tiempo.",
    ),
    "per-minute-left": mistake(
      "La velocidad se quedó en {length.unit} por minuto.",
      "Nadie aplica a esa velocidad.",
      "{oneSpeed} son unos {perMinute} {length.unit} por minuto.",
    ),
    "other-speed-unit": mistake(
      "La velocidad está en la unidad del otro sistema.",
      "1 milla son unos {mile}.",
      "Lea en la pregunta qué unidad se pide.",
    ),
    "land-for-lawn": mistake(
      "La dosis por {oneLawn.unit} se usó como dosis por {oneLand.unit}.",
      "La cantidad es demasiado chica.",
      "Lea por cuánta área es la dosis, y use esa área.",
    ),
    "lawn-size-left-out": mistake(
      "La dosis se usó como si fuera por {oneArea}.",
      "La cantidad es demasiado grande.",
      "La dosis es por {oneLawn.unit}: divida el área entre eso.",
    ),
    "nutrient-for-product": mistake(
      "Este es el peso del nutriente, no del fertilizante.",
      "Solo una parte del saco es el nutriente: hace falta más fertilizante.",
      "Divida el nutriente entre el porcentaje del saco.",
    ),
    "content-multiplied": mistake(
      "El nutriente se multiplicó por el porcentaje del saco, en vez de dividirse entre él.",
      "El fertilizante no puede pesar menos que el nutriente que tiene.",
      "Divida el nutriente entre el porcentaje del saco.",
    ),
    "row-size-left-out": mistake(
      "La dosis se usó como si fuera por {oneLength} de hilera.",
      "La cantidad es demasiado grande.",
      "La dosis es por {oneRow.unit}: divida el largo de hilera entre eso.",
    ),
    "unscaled-row": mistake(
      "Esta es la cantidad para {oneRow.unit} de hilera, no para todas las hileras.",
      "Compare el largo de todas las hileras con {oneRow.unit}.",
      "Divida el largo de todas las hileras entre {oneRow.unit} y multiplique por la dosis.",
    ),
    "row-ten-times": mistake(
      "La dosis se usó como si fuera por {tenthOfRow} de hilera.",
      "La cantidad es 10 veces más grande de lo debido.",
      "La dosis es por {oneRow.unit} de hilera.",
    ),
    "divided-by-rows": mistake(
      "La dosis se dividió entre el largo de hilera, en vez de multiplicarla.",
      "Hileras más largas deben llevar más producto.",
      "Divida el largo de todas las hileras entre {oneRow.unit} y multiplique por la dosis.",
    ),
    "unscaled-lawn": mistake(
      "Esta es la cantidad para {oneLawn.unit}, no para la parcela.",
      "Compare la parcela con {oneLawn.unit}.",
      "Divida el área entre {oneLawn.unit} y multiplique esta cantidad por el resultado.",
    ),
    "lawn-ten-times": mistake(
      "La dosis se usó como si fuera por {tenthOfLawn}.",
      "La cantidad es 10 veces más grande de lo debido.",
      "La dosis es por {oneLawn.unit}.",
    ),
    "small-mass-for-large": mistake(
      "La cantidad se pasó a la unidad de peso más chica.",
      "La pregunta pide {mass.unit}.",
      "Deje la cantidad en {mass.unit}.",
    ),
    "pounds-as-kilograms": mistake(
      "La cantidad está en kilogramos, no en libras.",
      "1 libra son unos {pound}.",
      "Lea en la pregunta qué unidad se pide.",
    ),
    "mass-unit-left": mistake(
      "La cantidad se quedó en {mass.unit}.",
      "La pregunta pide {smallMass.unit}.",
      "En {oneMass} hay {perMass} {smallMass.unit}.",
    ),
    "pound-of-12": mistake(
      "Una libra se tomó como 12 onzas.",
      "La cantidad es demasiado chica.",
      "1 libra son 16 onzas de peso.",
    ),
    "weighed-by-water": mistake(
      "El peso se pasó a onzas líquidas, como si el producto fuera agua.",
      "Un polvo no pesa lo mismo que el agua, y la pregunta pide un peso.",
      "Pese un producto seco en una báscula.",
    ),
    "one-spot-only": mistake(
      "Este es el producto para un solo manchón.",
      "Hay más de un manchón.",
      "Multiplique por el número de manchones.",
    ),
    "added-on-top": mistake(
      "El porcentaje se tomó de la mezcla más el producto.",
      "La cantidad sale demasiado grande.",
      "Tome el porcentaje de la mezcla final.",
    ),
    "area-for-product": mistake(
      "Esta es el área que se cubre, no el producto.",
      "La pregunta pide el producto.",
      "Multiplique el área por la dosis.",
    ),
    "mix-for-product": mistake(
      "Esta es la mezcla, no el producto que lleva.",
      "La pregunta pide el producto.",
      "Multiplique la mezcla por su concentración: el producto que lleva {oneVolume}.",
    ),
    "reserve-without-product": mistake(
      "El agua extra no llevó producto.",
      "Toda la mezcla quedaría demasiado débil.",
      "Calcule el producto para toda la mezcla, también la mezcla extra.",
    ),
    "product-for-reserve-only": mistake(
      "Este es el producto solo para la mezcla extra.",
      "La parcela también necesita producto.",
      "Calcule el producto para toda la mezcla.",
    ),
    "reserve-subtracted": mistake(
      "La mezcla extra se restó en vez de sumarse.",
      "La mezcla no alcanzaría para toda la parcela.",
      "Sume la mezcla extra a lo que lleva la parcela.",
    ),
    "applied-ignored": mistake(
      "No se contó lo que ya se aplicó.",
      "Sume la temporada: pasaría del límite.",
      "Reste primero del límite lo que ya se aplicó.",
    ),
    "limit-passed": mistake(
      "La última aplicación se redondeó hacia arriba: pasa del límite de la temporada.",
      "Sume la temporada: pasa del límite.",
      "Redondee hacia abajo.",
    ),
    "limit-unrounded": mistake(
      "El número de aplicaciones no se redondeó.",
      "No se puede hacer una parte de una aplicación.",
      "Redondee hacia abajo a un número entero.",
    ),
    "one-application-subtracted": mistake(
      "Solo se restó una aplicación.",
      "Cuente en el registro cuántas hubo.",
      "Multiplique la dosis por el número de aplicaciones y reste eso.",
    ),
    "rate-left-for-count": mistake(
      "Esto es cuánto se puede aplicar todavía, no cuántas veces.",
      "La pregunta pide un número de aplicaciones.",
      "Divida entre la dosis y redondee hacia abajo.",
    ),
    "catch-unscaled": mistake(
      "Lo recogido se leyó tal cual, pero el tiempo en que se recogió no es el de la franja.",
      "Compare los dos tiempos.",
      "Multiplique lo recogido por el tiempo de la franja y divida entre el tiempo en que se recogió.",
    ),
    "times-upside-down": mistake(
      "Los dos tiempos se usaron al revés.",
      "Tardar más en la franja debe dar un volumen más alto.",
      "Multiplique por el tiempo de la franja y divida entre el tiempo en que se recogió.",
    ),
    "catch-per-minute": mistake(
      "Se usó lo recogido en un minuto entero.",
      "La franja no lleva un minuto.",
      "Use lo recogido en el tiempo que lleva la franja.",
    ),
    "reading-divided": mistake(
      "Lo recogido se dividió entre {perVolume}.",
      "La franja tiene ese largo para que no haya que convertir nada.",
      "Lea como volumen de aplicación lo recogido en el tiempo de la franja.",
    ),
    "reading-multiplied": mistake(
      "Lo recogido se multiplicó por {perVolume}.",
      "La franja tiene ese largo para que no haya que convertir nada.",
      "Lea como volumen de aplicación lo recogido en el tiempo de la franja.",
    ),
    "boom-on-one-width": mistake(
      "Lo recogido de todas las boquillas se usó con el ancho de una.",
      "Todas las boquillas juntas cubren todo el aguilón.",
      "Divida entre el número de boquillas, o use el ancho del aguilón.",
    ),
    "one-nozzle-for-boom": mistake(
      "Lo recogido de una boquilla se usó con el ancho del aguilón.",
      "Una boquilla cubre solo su propio ancho.",
      "Use el total de todas las boquillas, o el ancho de una.",
    ),
    "average-for-boom": mistake(
      "El promedio de una boquilla se usó con el ancho del aguilón.",
      "Una boquilla cubre solo su propio ancho.",
      "Use el promedio de lo recogido con el ancho de una boquilla.",
    ),
    "nozzles-squared": mistake(
      "Lo recogido se multiplicó dos veces por el número de boquillas.",
      "El volumen es demasiado alto.",
      "Cuente cada boquilla una vez.",
    ),
    "difference-as-percent": mistake(
      "La diferencia se leyó como porcentaje.",
      "La misma diferencia es una parte mayor de una cantidad chica que de una grande.",
      "Divida la diferencia entre el promedio y multiplique por 100.",
    ),
    "off-itself": mistake(
      "La diferencia se dividió entre lo recogido de la misma boquilla.",
      "La pregunta pide un porcentaje del promedio.",
      "Divida la diferencia entre el promedio.",
    ),
    "off-the-others": mistake(
      "La boquilla se comparó con el promedio de las otras.",
      "El promedio de la pregunta es el de todas las boquillas.",
      "Tome el promedio de todas las boquillas.",
    ),
    "share-of-average": mistake(
      "Esto es lo recogido en porcentaje del promedio, no cuánto se aparta.",
      "Con esa cuenta, una boquilla que da el promedio se apartaría {wholePercent}.",
      "Reste primero el promedio.",
    ),
    "spread-taken": mistake(
      "Esta es la diferencia entre la boquilla que más da y la que menos da.",
      "La pregunta es cuánto se aparta una boquilla del promedio.",
      "Reste el promedio, no el otro extremo.",
    ),
    "off-the-lowest": mistake(
      "La boquilla que más da se comparó con la que menos da.",
      "La pregunta pide un porcentaje del promedio.",
      "Compare con el promedio.",
    ),
    "part-not-percent": mistake(
      "Este es el número decimal, no el porcentaje.",
      "El número es 100 veces más chico de lo debido.",
      "Multiplique por 100.",
    ),
    "ratio-ignored": mistake(
      "No se contó la proporción del inyector.",
      "Las plantas recibirían demasiado poco.",
      "Multiplique la solución madre por la proporción para tener la solución que da.",
    ),
    "per-hundred-left-out": mistake(
      "La dosis por 100 {volume.unit} se usó como dosis por {oneVolume}.",
      "La cantidad es 100 veces más grande de lo debido.",
      "Divida primero la solución entre 100.",
    ),
    "one-unit-of-stock": mistake(
      "Este es el producto para {oneVolume} de solución madre.",
      "La pregunta da otra cantidad de solución madre.",
      "Multiplique por esa cantidad de solución madre.",
    ),
    "ratio-inverted": mistake(
      "La proporción se usó al revés.",
      "La solución madre debe ser más fuerte que la solución.",
      "Multiplique por la proporción.",
    ),
    "rate-per-unit-of-stock": mistake(
      "La dosis por 100 {volume.unit} de solución se usó como dosis por {oneVolume} de solución madre.",
      "Eso solo vale con un inyector de 1:100.",
      "Calcule cuánta solución da la solución madre.",
    ),
    "order-as-listed": mistake(
      "Los productos se agregaron como están en la lista.",
      "La lista no tiene orden.",
      MIXING_RULE,
    ),
    "order-reversed": mistake(
      "El orden se puso al revés.",
      "Lo que va al final ya está en el agua, y lo demás quizá no se mezcle.",
      MIXING_RULE,
    ),
    "adjuvant-first": mistake(
      "El adyuvante se puso demasiado pronto.",
      "Puede hacer espuma mientras se mezcla lo demás.",
      "Los adyuvantes van al final, después de los productos.",
    ),
    "liquids-before-powders": mistake(
      "Un producto líquido se puso demasiado pronto.",
      "Lo que debe ir antes quizá ya no se mezcle bien.",
      "Primero los polvos y gránulos, luego las suspensiones, y después las emulsiones.",
    ),
    "conditioner-last": mistake(
      "El acondicionador de agua se puso demasiado tarde.",
      "Los productos ya están en el agua antes de que actúe.",
      "El acondicionador va primero, antes de los productos.",
    ),
    "powders-swapped": mistake(
      "Los gránulos se pusieron antes que el polvo mojable.",
      "Un polvo necesita más tiempo para mojarse.",
      "Primero el polvo mojable, luego los gránulos dispersables.",
    ),
    "canopy-size-left-out": mistake(
      "La copa no se dividió entre {oneCanopy.unit}.",
      "Nadie aplica tanto.",
      "La mezcla es para {oneCanopy.unit} de copa: divida entre eso primero.",
    ),
    "alleys-as-canopy": mistake(
      "Las calles entre las hileras se contaron como copa.",
      "Dibuje dos hileras: entre ellas no hay hojas.",
      CANOPY_SUM,
    ),
    "canopy-for-spray": mistake(
      "Esta es la copa, no la mezcla para ella.",
      "La pregunta pide la mezcla.",
      "Divida la copa entre {oneCanopy.unit} y multiplique por la mezcla.",
    ),
    "canopy-height-left-out": mistake(
      "Se omitió la altura de los árboles.",
      "Árboles el doble de altos deben llevar el doble de mezcla.",
      CANOPY_SUM,
    ),
    "canopy-width-left-out": mistake(
      "Se omitió el ancho de los árboles.",
      "Árboles el doble de anchos deben llevar el doble de mezcla.",
      CANOPY_SUM,
    ),
    "rows-counted-twice": mistake(
      "Cada hilera se contó dos veces, una por cada lado.",
      "Una hilera tiene una sola copa, se trate del lado que se trate.",
      "No multiplique por 2.",
    ),
    "spacing-multiplied": mistake(
      "La copa se multiplicó por la distancia entre hileras en vez de dividirse.",
      "Hileras más separadas deben dar menos copa.",
      CANOPY_SUM,
    ),
    "volumes-in-two-units": mistake(
      "Un volumen quedó en {small.unit} y el otro en {volume.unit}.",
      "El tiempo es {perVolume} veces más largo de lo debido.",
      "En {oneVolume} hay {perVolume} {small.unit}: cambie uno de los dos primero.",
    ),
    "minutes-for-seconds": mistake(
      "La respuesta quedó en minutos.",
      "La pregunta pide segundos.",
      "Multiplique los minutos por 60 para obtener segundos.",
    ),
    "flow-multiplied": mistake(
      "El volumen se multiplicó por la descarga en vez de dividirse.",
      "Con una descarga mayor debe bastar menos tiempo.",
      TIME_SUM,
    ),
    "time-of-catch": mistake(
      "Este es el tiempo en que se recogió.",
      "Una planta no recibe el mismo volumen que se recogió.",
      TIME_SUM,
    ),
    "plants-from-catch": mistake(
      "Esto es para cuántas plantas alcanza lo recogido.",
      "La pregunta pide segundos.",
      "Divida el tiempo en que se recogió entre ese número.",
    ),
    "decimal-point": mistake(
      "Las cifras son correctas, pero el punto decimal está en otro lugar.",
      "El número está lejos de una estimación con números redondos.",
      "Calcúlelo otra vez y cuente los ceros y los decimales.",
    ),
    "other-kind-of-unit": mistake(
      "Esta unidad no va con la pregunta.",
      "Una cantidad no es una dosis, un largo no es un área, un peso no es un volumen, y lo que se cuenta no lleva unidad.",
      "Lea en la pregunta qué unidad se pide.",
    ),
    "right-number": mistake(
      "El número es correcto, pero la unidad debe ser {asked.unit}.",
      "Una respuesta es un número con su unidad.",
      "Anote la unidad que se pide.",
    ),
    "number-in-other-unit": mistake(
      "El número es correcto en otra unidad, pero no en {asked.unit}.",
      "Sin unidad, un número está en la unidad de la pregunta.",
      "Anote su unidad junto al número, o páselo a {asked.unit}.",
    ),
    "first-nozzle-only": mistake(
      "Se usó solo la primera boquilla, y no el promedio de todas.",
      "Una boquilla puede echar más o menos que las otras.",
      "Sume lo recogido de todas las boquillas y divídalo entre el número de boquillas.",
    ),
    "boom-one-spacing-short": mistake(
      "El ancho del aguilón se tomó desde la primera boquilla hasta la última.",
      "Cada boquilla de los extremos cubre medio espacio más.",
      "Multiplique la distancia entre boquillas por el número de boquillas.",
    ),
    "step-for-answer": mistake(
      "Este es el resultado de un paso anterior: {step}.",
      "La pregunta pide otra cosa.",
      "Siga desde ese paso hasta lo que pide la pregunta.",
    ),
  },
  practice: {
    title: "Problemas de práctica",
    problem: "Problema {number}",
    answer: "Respuesta",
    answerIs: "Respuesta: {answer}",
    mistakes: "Respuestas equivocadas comunes",
    wrongAnswer: "Respuesta equivocada",
    shows: "Qué muestra",
    right: "Correcto.",
    rounded: "Correcto, pero redondeado. La respuesta exacta es {answer}.",
    otherUnit: "Correcto, pero en otra unidad. En la unidad de la pregunta es {answer}.",
    otherUnitRounded: "Correcto, pero redondeado y en otra unidad. La respuesta exacta es {answer}.",
    mistake: "No es correcto.",
    twoMistakes: "No es correcto. Dos errores podrían explicar esta respuesta.",
    unknownHigh: "No es correcto: {percent} demasiado alto.",
    unknownLow: "No es correcto: {percent} demasiado bajo.",
    tooHigh: "No es correcto: demasiado alto.",
    tooLow: "No es correcto: demasiado bajo.",
    timesHigh: "No es correcto: es unas {times} veces la respuesta correcta.",
    timesLow: "No es correcto: la respuesta correcta es unas {times} veces mayor.",
    minus: "No es correcto. El número es correcto sin el signo menos.",
    levelSpoons: "cuchara,cucharas,rasa,rasas,al ras,llena,llenas,entera,enteras",
    joining: "y",
    about: "unos,unas,aproximadamente,aprox,más o menos,mas o menos,alrededor de,cerca de,como",
    eachLetter: "No es correcto. Escriba cada letra una vez: {letters}.",
    tolerance: "Una respuesta es correcta si difiere en {percent} o menos de la exacta.",
    roundings:
      "También lo es la respuesta exacta, en la unidad de la pregunta, redondeada a una, dos o tres cifras, si difiere en {roundest} o menos.",
    doses:
      "Redondee hacia abajo las cantidades de producto: pasar de la respuesta exacta es un error. Lo que se cuenta debe ser exacto.",
    factors: "Puede necesitar: {factors}.",
    titleOfSet: "{title}, serie {set}",
    titleOfKey: "{title}: clave",
    name: "Nombre",
    date: "Fecha",
    toScale: "Dibujado a escala",
    theProblem: "El problema",
    estimate: "Estimación",
    estimateOf: "Redondee {figures}. Da más o menos {answer}.",
    estimateOthers: "Redondee {figures}. Con las demás cifras como están, da más o menos {answer}.",
    roundedTo: "{given} a {round}",
    step: "Paso {number}: {found}",
    stepIn: "Paso {number}: {found} en {unit}",
    unitsOnly: "Unidades: {units}",
    cancel: "Se {count:one=cancela;other=cancelan}: {units}.",
    check: "Comprobación en otras unidades",
    checkMore: "Comprobación en otras unidades, continuación",
    checkOf: "En las otras unidades: {figures}.",
    checkSame: "Es la misma respuesta.",
    hundreds: "centenares de {unit}",
    thousands: "millares de {unit}",
  },
};

/**
 * Practice problems in Spanish, with everything that {@link SPANISH_WORDS} has.
 *
 * Translated by the authors of this library and not certified.
 *
 * @example
 * ```ts
 * import { practiceProblem } from "swath-to-spoon/practice";
 * import { SPANISH_PRACTICE_WORDS } from "swath-to-spoon/words/es-practice";
 *
 * const { problem } = practiceProblem("percent-mix", 7, { words: SPANISH_PRACTICE_WORDS, locale: "es-US" });
 * console.log(problem); // Usted trata las camas del vivero de Brackenby. La etiqueta dice que agregue 0.5% v/v de un esparcidor. El tanque se llena hasta 4 galones. ¿Cuánto esparcidor es (onzas líquidas)?
 * ```
 */
export const SPANISH_PRACTICE_WORDS: PracticeMessages = /* @__PURE__ */ frozen(
  (() => ({
    ...SPANISH_WORDS,
    ...SPANISH_PRACTICE,
    lines: { ...SPANISH_WORDS.lines, ...SPANISH_PRACTICE.lines },
  }))(),
);
