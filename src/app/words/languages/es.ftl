# Los textos de la página en español. Las mismas claves que en.ftl.

## figures

unit-inch = pulg

unit-foot = pies

unit-one-foot = pie

unit-square-foot = pies²

unit-one-square-foot = pie²

unit-pound-per-square-foot = lb/pie²

unit-pound-per-cubic-foot = lb/pie³

unit-foot-pound-force = lbf·pie

unit-per-foot = /pie

unit-per-square-foot = /pie²

unit-fluid-ounce = oz líq

unit-days = días

unit-day = día

month-1 = ene

month-2 = feb

month-3 = mar

month-4 = abr

month-5 = may

month-6 = jun

month-7 = jul

month-8 = ago

month-9 = sep

month-10 = oct

month-11 = nov

month-12 = dic

date = { $day } { $month } { $year }

list-and = { $before } y { $last }

## boot

boot-name = Español

boot-loading = Cargando Slackwater…

boot-late = Tarda más de lo debido. Si la conexión es lenta, espere un poco más; si no, recargue la página o pruebe con un navegador más nuevo. Lo que usted conserva en este navegador sigue intacto.

boot-no-script = Slackwater no puede iniciarse mientras JavaScript esté desactivado en este navegador. Actívelo y recargue la página.

boot-failed = No se pudo cargar Slackwater. Revise la conexión e inténtelo de nuevo. Lo que usted conserva en este navegador sigue intacto.

boot-too-old = Slackwater no funciona en este navegador: falta WebAssembly o está desactivado. Pruebe con un navegador más nuevo.

boot-again = Intentar de nuevo

## mod

step-container = Recipiente

step-crop = Cultivo

step-fertilizer = Fertilizante

step-climate = Clima

step-question-container = ¿En qué recipiente va la solución?

step-question-crop = ¿Qué va a cultivar, cuántas plantas y cuándo?

step-question-fertilizer = ¿Qué va a disolver y en qué agua?

step-question-climate = ¿Qué aire y qué luz reciben las plantas?

unit-system-metric = Litros, cm, °C

unit-system-us-customary = Galones, pulgadas, °F

example-bottle = Una planta en una botella

example-bucket = Dos o tres plantas en una cubeta

example-covered-tank = Un tanque cubierto

example-floating-boards = Placas que flotan y luego descansan

example-more-bottle = { $units ->
    [us] 1 galón
   *[metric] 4 litros
}, una maceta de rejilla en el cuello, con clima templado y húmedo.

example-more-bucket = { $units ->
    [us] 5 galones
   *[metric] 19 litros
} con tapa, con clima templado y húmedo. Lo habitual para empezar.

example-more-covered-tank = Un marco de madera con lona impermeable bajo una sola placa, 48 plantas.

example-more-floating-boards = Un tanque largo, 12 placas de espuma rígida sobre dos tubos, 144 plantas.

fetching = Un momento: se está cargando esta parte de la página.

not-fetched = No se pudo cargar esta parte de la página. Revise la conexión e inténtelo de nuevo.

fetch-again = Intentar de nuevo

name = Slackwater

motto = Cultivos de hoja en solución nutritiva en reposo, calculados antes de plantar

foot = Las cifras son pronósticos basados en modelos publicados y en las medidas que usted da. No sustituyen las etiquetas de los productos, las normas locales ni la asesoría de profesionales autorizados. Todo lo que usted ingresa se queda en este dispositivo.

welcome = ¿Qué quiere cultivar?

welcome-more = Abra un plan ya hecho y adáptelo, o empiece con el recipiente que tiene. Nada de esto necesita electricidad, bomba ni internet.
stand-where = ¿Dónde estarán las plantas?
stand-as-said = No lo sé: techo transparente o túnel

start-own = Empezar con lo que tengo

own-plan = Mi plan

your-plans = Sus planes

plans = Planes

plan-name = Nombre de este plan

new-plan = Plan nuevo

duplicate = Hacer una copia

delete = Borrar

undo = Deshacer

dismiss = Cerrar

units = Unidades

steps = Pasos

next = Siguiente

back = Atrás

to-result = Ver el resultado

unnamed = Plan sin nombre

update-ready = Ya está lista una versión más nueva de Slackwater. Se abrirá sola cuando haya cerrado esta página en todas partes; sus planes se conservan.

take-update = Actualizar ahora

not-kept = Este navegador no conserva los planes aquí (el almacenamiento está bloqueado o lleno). Su plan sigue disponible mientras esta página esté abierta. Imprima la ficha antes de cerrarla.

set-aside = No se pudieron leer los planes conservados en este navegador. Se apartaron sin cambios; guárdelos en un archivo antes de continuar.

save-set-aside = Guardar lo apartado

set-aside-file = slackwater-apartado.json

not-sure = ¿Tiene dudas sobre un dato? Déjelo como está, o vacío: se usa un valor habitual y se indica cuál. El resultado está listo en todo momento.

plan-copy-name = { $name } (copia)

plan-deleted = Plan borrado: { $name }.

plan-delete-this = Borrar { $name }

step-entries-to-mend = { $count ->
    [one] 1 dato por corregir
   *[other] { $count } datos por corregir
}

language-label = Idioma

## choices

method-bottle = Una planta en una botella

method-bucket = Varias plantas en una cubeta

method-covered-tank = Tanque cubierto

method-floating-boards = Placas flotantes sobre tubos

shape-cylinder = Redondo, paredes rectas

shape-tapered-round = Cónico (casi todas las cubetas)

shape-rectangular = Caja, paredes rectas

shape-tapered-rectangular = Caja, paredes inclinadas (casi toda caja de plástico)

shape-bottle = Botella con hombro y cuello

shape-measured = Medido con una jarra

pattern-square = Filas alineadas

pattern-staggered = Filas alternas desplazadas (a tresbolillo)

pattern-hexagonal = Hexagonal, vecinas a igual distancia

date-meaning-transplanting = el trasplante

date-meaning-seeding = la siembra

dosing-dry-blend = Una mezcla seca, que se pesa

dosing-stocks = Soluciones madre A y B

dosing-salts = Sales simples, según una solución publicada

water-kind-rain = De lluvia, o igual de pura

water-kind-tap = De la llave (grifo), solo su CE

water-kind-analysis = Un análisis completo

acid-choice-none = Ninguno

acid-choice-nitric = Ácido nítrico

acid-choice-phosphoric = Ácido fosfórico

acid-choice-sulfuric = Ácido sulfúrico

acid-choice-citric = Ácido cítrico (en polvo)

recipe-choice-hoagland-arnon1 = Hoagland y Arnon 1950, n.º 1

recipe-choice-hoagland-arnon2 = Hoagland y Arnon 1950, n.º 2

recipe-choice-steiner = Steiner 1984, universal

recipe-choice-sonneveld-straver-lettuce = Sonneveld y Straver 1994, lechuga

recipe-choice-modified-sonneveld = Mattson y Peters 2014, hortalizas de hoja

salt-calcium-nitrate = Nitrato de calcio tetrahidratado

salt-calcium-ammonium-nitrate = Nitrato de calcio granulado ({ $grade })

salt-potassium-nitrate = Nitrato de potasio

salt-monopotassium-phosphate = Fosfato monopotásico

salt-monoammonium-phosphate = Fosfato monoamónico

salt-magnesium-sulfate = Sulfato de magnesio (sal de Epsom)

salt-magnesium-nitrate = Nitrato de magnesio hexahidratado

salt-potassium-sulfate = Sulfato de potasio

salt-ammonium-nitrate = Nitrato de amonio

salt-ammonium-sulfate = Sulfato de amonio

salt-potassium-chloride = Cloruro de potasio

salt-calcium-chloride = Cloruro de calcio dihidratado

salt-boric-acid = Ácido bórico

salt-borax = Bórax

salt-manganese-sulfate = Sulfato de manganeso monohidratado

salt-zinc-sulfate = Sulfato de zinc heptahidratado

salt-copper-sulfate = Sulfato de cobre pentahidratado

salt-sodium-molybdate = Molibdato de sodio dihidratado

salt-iron-sulfate = Sulfato de hierro(II) heptahidratado

salt-iron-edta = Quelato de hierro (EDTA)

salt-iron-dtpa = Quelato de hierro (DTPA)

salt-iron-eddha = Quelato de hierro (EDDHA)

strength-by-conductivity = CE (se comprueba con un medidor)

strength-by-nitrogen = Nitrógeno (se pesa, no se comprueba)

calcium-nitrate-double-salt = Granulado, { $grade } con amonio

calcium-nitrate-tetrahydrate = Cristales, tetrahidratado

daylight-by-radiation = Radiación solar

daylight-by-sunshine = Horas de sol

pipe-ends-open = Abiertos: la solución los llena

pipe-ends-capped = Tapados con aire: tienden a flotar, póngales peso

pipe-ends-flooded = Llenos y después tapados

pipe-material-pvc = PVC

pipe-material-polyethylene = Polietileno (HDPE)

pipe-material-polypropylene = Polipropileno

pipe-material-abs = ABS

stands-on-ground = Suelo firme y nivelado

stands-on-slab = La losa de un edificio, apoyada en el suelo

stands-on-bench = Una mesa o un banco

stands-on-upper-floor = Un piso con un cuarto o un hueco debajo

stands-on-balcony-or-roof = Un balcón, una terraza elevada o un techo

cover-material-extruded-foam = Espuma extruida

cover-material-expanded-foam = Espuma expandida (de perlas)

cover-material-plywood = Madera contrachapada

cover-material-rigid-plastic = Lámina de plástico rígido

cover-material-fabric = Tela o película tensada sobre un marco

crop-kind-leaf-lettuce = Lechuga de hoja

crop-kind-butterhead-lettuce = Lechuga mantecosa

crop-kind-romaine-lettuce = Lechuga romana

crop-kind-pak-choi = Pak choi (sin validar)

crop-kind-leaf-mustard = Mostaza de hoja (sin validar)

crop-kind-spinach = Espinaca (sin validar)

crop-kind-chard = Acelga (sin validar)

crop-kind-basil = Albahaca (sin validar)

crop-kind-coriander = Cilantro (sin validar)

crop-kind-parsley = Perejil (sin validar)

shelter-rain-cover = Techo transparente, lados abiertos

shelter-porch = Porche o galería con techo opaco

shelter-plastic-shelter = Túnel o invernadero de plástico

shelter-greenhouse = Invernadero de vidrio

shelter-windowsill = En interior, junto a una ventana luminosa

shelter-lamps = En interior, con lámparas

climate-choice-upland-cool-humid = Tierras altas frescas y húmedas

climate-choice-temperate-late-summer = Templado, fin del verano a otoño

climate-choice-temperate-spring = Templado, primavera

climate-choice-maritime-summer = Costa fresca, verano

climate-choice-mild-humid-coast = Costa templada y húmeda

climate-choice-tropical-lowland = Trópico bajo, caluroso y húmedo

climate-choice-tropical-highland = Trópico alto, época seca

climate-choice-dry-summer = Tierra adentro, verano caluroso y seco

climate-choice-desert-winter = Desierto, invierno

climate-choice-subtropical-winter = Subtrópico, invierno

climate-choice-room-under-lamps = Un cuarto con lámparas

climate-choice-own = Mis propios datos

foam-extruded-x = Extruida, { $density } (tipo X)

foam-extruded-iv = Extruida, { $density } (tipo IV, habitual)

foam-extruded-vi = Extruida, { $density } (tipo VI)

foam-expanded-i = Expandida (perlas), { $density } (tipo I)

foam-expanded-viii = Expandida (perlas), { $density } (tipo VIII)

foam-expanded-ii = Expandida (perlas), { $density } (tipo II)

foam-expanded-ix = Expandida (perlas), { $density } (tipo IX)

pot-choice-small = de unos { $units ->
    [us] 2 pulg
   *[metric] 5 cm
} de ancho y de hondo

pot-choice-medium = de unos { $units ->
    [us] 3 pulg
   *[metric] { $size } cm
} de ancho y de hondo

pot-choice-deep = de unos { $units ->
    [us] 3 pulg de ancho y 4 pulg de hondo
   *[metric] { $width } cm de ancho y 10 cm de hondo
}

vessel-choice-bottle4 = Botella de { $units ->
    [us] 1 gal
   *[metric] 4 L
} de cuello ancho

vessel-choice-cut-bottle2 = Botella de { $units ->
    [us] 1/2 gal
   *[metric] 2 L
} sin la parte de arriba

vessel-choice-bucket19 = Cubeta de { $units ->
    [us] 5 gal
   *[metric] 19 L
} ({ $units ->
    [us] 5 1/2 gal
   *[metric] 21 L
} al borde)

vessel-choice-box45 = Caja de plástico de { $units ->
    [us] 12 gal
   *[metric] 45 L
}

vessel-choice-tank240 = Marco de { $units ->
    [us] 8 × 4 pies
   *[metric] { $length } × { $width } m
} con lona

vessel-choice-tank720 = Marco de { $units ->
    [us] 24 × 4 pies
   *[metric] { $length } × { $width } m
} con lona

timber-dressed = { $thick } × { $wide } pulg nominales (reales: { $size })

blend-choice-own = Otra: copio su etiqueta

pipe-choice-own = Otro: lo mido yo

pipe-choice-inch = { $nominal } pulg (cédula 40)

pipe-choice-drain = { $nominal } pulg (desagüe y drenaje)

choice-empty = Elija…

choice-unknown = «{ $text }» (no está en la lista)

preset-vessel = Usar las medidas de…

preset-pot = Usar una maceta común…

label-preset-vessel = Recipientes comunes

label-preset-pot = Macetas de rejilla comunes

add-line = Añadir una línea

remove-line = Quitar la última línea

kept-blends = Mezclas conservadas, para todos los planes

take-blend = Usar { $name }

forget = Olvidar

forget-blend = Olvidar la mezcla { $name }

blend-name = Nombre para conservar esta etiqueta

keep-blend = Conservar esta etiqueta para todos los planes

keep-again = Conservarla de nuevo

keep-salt = Conservar esta sal para todos los planes

forget-salt = Dejar de conservar esta sal

today = Hoy

pick-date = Elegir la fecha en un calendario

group-vessel = El recipiente

group-pot = Tapa y macetas

group-pot-boards = Macetas de rejilla

group-pot-measures = Medidas de la maceta de rejilla

group-boards = Placas

group-pipes = Tubos

group-fill = Llenado

group-plants = Plantas

group-dates = Fechas

group-harvest = Cosecha

group-water = Agua de origen

group-blend = Mezcla

group-strength = Concentración

group-stocks-heading = Soluciones madre

group-label = Lo que dice la etiqueta, % en masa

group-recipe = Receta y sales

group-acid = Ácido para el pH

group-more = Más cultivos con una sola carga, y precios

currency = Símbolo de su moneda

choose-salt = Elija, o escriba una fórmula al lado

own-formula = Fórmula propia

group-place = Lugar y época

group-air = Aire

group-light = Luz

## fields

label-count = Número de recipientes iguales

label-height = Altura interior, del fondo al borde

label-diameter = Diámetro interior

label-top-diameter = Diámetro interior en el borde

label-bottom-diameter = Diámetro interior en el fondo

label-length = Largo interior

label-width = Ancho interior

label-bottom-length = Largo interior en el fondo

label-bottom-width = Ancho interior en el fondo

label-body-height = Altura del cuerpo recto

label-shoulder-height = Altura del hombro inclinado

label-neck-diameter = Diámetro interior del cuello

label-neck-height = Altura del cuello

label-cover-thickness = Grosor de la tapa o cubierta

label-pot-height = Maceta: altura bajo el reborde

label-pot-top-diameter = Maceta: diámetro bajo el reborde

label-pot-bottom-diameter = Maceta: diámetro en la base

label-pot-flange-diameter = Maceta: diámetro del reborde

label-pot-immersion = Maceta: parte sumergida al trasplantar

label-fill-depth = Profundidad de llenado, si prefiere fijarla usted

label-board-length = Largo de la placa

label-board-width = Ancho de la placa

label-board-thickness = Espesor de la placa

label-board-count = Placas en un tanque

label-pipe-outside-diameter = Tubo: diámetro exterior

label-pipe-wall = Tubo: espesor de la pared

label-pipe-count = Tubos lado a lado

label-pipe-spacing = De tubo a tubo, entre centros

label-pipe-material = De qué son los tubos

label-stands-on = El tanque está sobre

label-leg-count = Patas de la mesa

label-support-rating = Carga admisible del lugar

label-floor-drop = Fondo: desnivel entre extremos

label-timber = Madera de los lados

label-brace-spacing = De refuerzo a refuerzo en los lados

label-liner-layers = Capas de lona impermeable

label-cover-material = Material de la cubierta

label-prop-rows = Filas de puntales bajo la cubierta

label-edge-distance = Del centro de un agujero al borde

label-sheet-length = Lámina comercial: largo

label-sheet-width = Lámina comercial: ancho

label-sheet-price = Precio de una lámina comercial

label-pipe-price = Precio del tubo

label-timber-price = Precio de la madera

label-liner-price = Precio de la lona

label-pot-price = Precio de una maceta

label-plants-per-container = Plantas en un recipiente

label-spacing-across = Distancia a lo ancho

label-spacing-along = Distancia a lo largo

label-date = Fecha

label-seedling-age = Edad de la plántula al trasplante

label-target-head = Peso de la planta a la cosecha

label-growth-factor = Factor de crecimiento

label-water-factor = Factor de agua

label-people = Personas por alimentar cada semana

label-heads-per-person-week = Plantas por persona y semana

label-turnaround-days = Días para limpiar y volver a llenar

label-label-nitrogen = Nitrógeno total (N)

label-label-nitrate = Nitrógeno nítrico

label-label-ammonium = Nitrógeno amoniacal

label-label-urea = Nitrógeno ureico

label-label-phosphate = Fosfato (P2O5)

label-label-potash = Potasa (K2O)

label-label-calcium = Calcio (Ca)

label-label-magnesium = Magnesio (Mg)

label-label-sulfur = Azufre (S)

label-label-iron = Hierro (Fe)

label-label-manganese = Manganeso (Mn)

label-label-zinc = Zinc (Zn)

label-label-copper = Cobre (Cu)

label-label-boron = Boro (B)

label-label-molybdenum = Molibdeno (Mo)

label-target-conductivity = CE de la solución terminada

label-target-nitrogen = Nitrógeno en la solución terminada

label-raw-water-conductivity = CE de su agua de origen

label-rain-share = Parte de agua de lluvia

label-stock-acalcium-nitrate = Solución A: nitrato de calcio

label-stock-bblend = Solución B: mezcla

label-stock-bmagnesium-sulfate = Solución B: sulfato de magnesio

label-water-sodium = Sodio (Na)

label-water-potassium = Potasio (K)

label-water-chloride = Cloruro (Cl)

label-water-sulfate = Sulfato (SO4)

label-water-alkalinity = Alcalinidad, como CaCO3

label-water-nitrate = Nitrato (NO3)

label-water-ph = pH del agua

label-acid-strength = Concentración del ácido, en masa

label-acid-density = Densidad del ácido, g/mL

label-target-ph = pH deseado

label-stock-volume = Volumen de cada solución madre

label-store-temperature = Temperatura mínima del almacén

label-recipe-strength = Concentración de la receta

label-crops-in-arow = Cultivos consecutivos con una carga

label-price-blend = Precio de la mezcla

label-price-calcium-nitrate = Precio del nitrato de calcio

label-price-magnesium-sulfate = Precio del sulfato de magnesio

label-price-acid = Precio del ácido

label-water-kind = Qué sabe usted de su agua

label-acid = Ácido

label-recipe = Solución publicada

label-salts = Sales que usted tiene

label-latitude = Latitud

label-elevation = Altitud

label-temperature-min = Temperatura mínima de noche

label-temperature-max = Temperatura máxima de día

label-humidity = Humedad relativa media

label-solar-radiation = Radiación solar diaria, al aire libre

label-sunshine = Horas de sol pleno al día

label-light-through = Luz que deja pasar el techo

label-lamp-flux = Flujo de fotones en las hojas (PPFD)

label-lamp-hours = Horas de lámpara al día

label-carbon-dioxide = Dióxido de carbono en el aire

label-method = Dónde crecen las plantas

label-shape = Forma del recipiente

label-foam = Espuma de las placas

label-pipe = Tamaño del tubo

label-pipe-ends = Extremos de los tubos

label-crop-kind = Cultivo

label-pattern = Disposición de los agujeros

label-date-meaning = La fecha de abajo indica

label-dosing = Cómo mide el fertilizante

label-blend = Mezcla, por su fórmula N-P2O5-K2O

label-strength-by = Fijar la concentración por

label-calcium-nitrate = Tipo de nitrato de calcio

label-climate-kind = Lugar y época parecidos a los suyos

label-daylight-by = Qué sabe usted de la luz

label-shelter = Techo o abrigo

label-measured = Agua vertida y profundidad leída

label-measured-volume = Agua acumulada, línea { $number }

label-measured-depth = Profundidad leída, línea { $number }

label-salt-choice = Sal { $number }

label-salt-purity = Pureza de la sal { $number }

label-salt-price = Precio de la sal { $number }

label-step-up = { $label }: más

label-step-down = { $label }: menos

hint-count = Todos llevan lo mismo.

hint-height = Apoye una regla en el fondo y lea la medida a la altura del borde.

hint-diameter = Mida por dentro, de lado a lado, por lo más ancho.

hint-length = Entre las caras interiores, con la lona puesta.

hint-bottom-length = Lo mismo, abajo en el fondo.

hint-body-height = Del fondo hasta donde empieza a estrecharse.

hint-shoulder-height = De ahí hasta donde empieza el cuello.

hint-cover-thickness = De la pieza que sujeta las macetas. Ponga 0 si la maceta se apoya en el cuello.

hint-pot-height = De la base a la cara inferior del reborde.

hint-pot-flange-diameter = El borde saliente que impide que la maceta se caiga por el agujero.

hint-pot-immersion = Lo habitual: la parte de abajo, de { $low } a { $high }.

hint-fill-depth = Déjelo vacío para que se calcule.

hint-board-count = Las que flotan en un tanque.

hint-pipe-outside-diameter = Mídalo por fuera; el tamaño nominal no es el real.

hint-pipe-spacing = Déjelo vacío para repartirlos por igual a lo ancho.

hint-edge-distance = Déjelo vacío para usar la mitad de la distancia entre plantas.

hint-support-rating = De los documentos del constructor o del fabricante. Déjelo vacío si no lo sabe; en ese caso no construya ahí.

hint-floor-drop = Mídalo con un nivel de agua; con { $good }, el fondo está bien.

hint-brace-spacing = Las esquinas cuentan como refuerzos. Entre ellos, la solución empuja los lados hacia afuera.

hint-prop-rows = A lo largo, repartidas por igual entre los lados; 0 si no hay.

hint-sheet-length = Como se vende, antes de cortar.

hint-pipe-count = Están en el fondo y más adelante sostienen las placas.

hint-spacing-across = De planta a planta. Es también el espacio que puede ocupar una planta.

hint-date = Año-mes-día, por ejemplo 2027-03-01.

hint-seedling-age = Días desde la siembra. Lo habitual es de una a dos semanas.

hint-target-head = En fresco, con la planta cortada por encima de la maceta. Lo habitual en lechuga es de { $low } a { $high }.

hint-growth-factor = Empiece con { $start }. El 1 corresponde al modelo de crecimiento publicado, que va más rápido que los cultivos sin bombas.

hint-water-factor = Empiece con 1. El cuaderno de un cultivo da uno mejor.

hint-people = Déjelo vacío si no planta cada semana.

hint-turnaround-days = Déjelo vacío para usar 2 días.

hint-label-nitrogen = Copie cada línea de la bolsa. Lo que no figura en ella queda vacío o en 0.

hint-target-conductivity = Lo habitual para hortalizas de hoja con una sola carga es de { $low } a { $high } mS/cm. De ella resultan los gramos, tenga o no un medidor.

hint-target-nitrogen = Lo habitual para hortalizas de hoja es de 100 a 200 mg/L.

hint-raw-water-conductivity = Léala con el medidor. La lluvia tiene cerca de { $rain }; el agua de la llave suele tener de { $low } a { $high } mS/cm. ¿No tiene medidor? Déjela como está.

hint-rain-share = Parte de toda el agua. ¿No hay? Deje 0.

hint-water-kind = ¿Tiene dudas? Elija «De la llave» y deje la CE como está.

hint-water-alkalinity = Del análisis; si da bicarbonato, anote { $factor } veces ese valor.

hint-water-sulfate = Si el análisis da S, anote 3 veces ese valor.

hint-water-nitrate = Si el análisis da el nitrato como N, anote { $factor } veces ese valor.

hint-acid = Solo si el pH quedaría demasiado alto. Nunca con ácidos desconocidos, ni de destapar desagües ni de batería.

acid-wanted = Sin ácido el pH es { $ph }; a las hortalizas de hoja les conviene de { $low } a { $high }. Para añadir ácido hace falta un medidor o papel de pH: sin ellos deje «Ninguno» y plante de todos modos. El ácido cítrico es el más fácil de manejar, pero su efecto se pierde porque los microbios lo consumen.

acid-rain = También baja el pH si el { $share } del agua es de lluvia: vea «Agua de origen».

hint-acid-strength = De la etiqueta. El ácido cítrico en polvo seco es de 100 %, o de 91 % con agua de cristalización.

hint-target-ph = De { $low } a { $high } conviene a las hortalizas de hoja.

hint-store-temperature = Con el frío precipitan sales de las soluciones madre concentradas.

hint-recipe-strength = Las recetas se hicieron para sistemas con recirculación; para una sola carga conviene del 50 al 80 %.

hint-crops-in-arow = 1 es la respuesta segura. Más cultivos ahorran agua y sales, pero el sodio se acumula.

hint-sheet-price = En cualquier moneda. Déjelo vacío si no le interesa.

hint-salts = Elija de la lista o escriba una fórmula, como KNO3 o MgSO4.7H2O. Pureza del 100 %, salvo que la bolsa diga menos.

hint-stock-acalcium-nitrate = Lo habitual son { $strength }.

hint-stock-bblend = Lo habitual son { $strength } de una mezcla 8-15-36.

hint-stock-bmagnesium-sulfate = El heptahidratado, sal de Epsom. Lo habitual son { $strength }.

hint-latitude = Grados, positivos al norte; al sur con un signo menos o una S.

hint-temperature-min = Donde están las plantas, media de la época.

hint-humidity = Media de día y noche donde están las plantas.

hint-solar-radiation = De un servicio meteorológico, media de la época.

hint-light-through = Se toma del techo; cámbiela si la midió.

hint-lamp-flux = De la hoja de datos de la lámpara o de un medidor cuántico.

hint-carbon-dioxide = Cerca de 420 ppm al aire libre.

hint-climate-kind = Con esto se llenan los datos de abajo. Puede cambiar cualquiera.

hint-blend = Abajo figura una etiqueta típica de esta fórmula: copie los datos de su bolsa si son distintos. Debe disolverse por completo en agua.

hint-pipe = Diámetros exteriores reales, no tamaños nominales.

hint-shape = ¿Tiene dudas? Elija «Medido con una jarra» y vaya vertiendo agua con ella.

hint-measured = Vierta una cantidad conocida, lea la profundidad y siga. Tres líneas o más, cada una más honda que la anterior.

## problems

entries-to-mend = { $count ->
    [one] Hay que corregir un dato
   *[other] Hay que corregir { $count } datos
}

stale = Las cifras de abajo son las de antes. Se actualizarán en cuanto corrija esto; la ficha también espera.

problem-number-from-to = Escriba un número entre { $low } y { $high }.

problem-missing-date = Escriba una fecha, por ejemplo 2027-03-01.

problem-missing-salts = Indique al menos una sal que usted tenga.

problem-missing-choice = Elija una opción.

problem-not-a-number = «{ $got }» no es un número.

problem-unknown-unit = La unidad de «{ $got }» no sirve aquí.

problem-comma-or-thousands = «{ $got }» se puede leer de dos maneras. Escriba { $fraction }, o bien { $whole }.

problem-too-large = «{ $got }» es demasiado grande para calcular.

problem-out-of-range = { $got } está fuera de lo permitido: de { $low } a { $high }.

problem-not-whole = { $got } no es un número entero.

problem-boards-need-box = Las placas flotantes necesitan una caja de paredes rectas; si no, se atascan al bajar el nivel.

problem-not-a-choice = «{ $got }» no está en la lista. Elija una opción.

problem-not-a-formula = «{ $got }» no es una sal de la lista ni una fórmula química como KNO3 o MgSO4.7H2O.

problem-not-a-date = «{ $got }» no es una fecha del calendario. Escriba año-mes-día, por ejemplo 2027-03-01.

problem-measured-pairs = { $got ->
    [one] Hay 1 línea con datos
   *[other] Hay { $got } líneas con datos
}; se necesitan { $needed } o más.

problem-not-a-plan = Esto no es un plan: no se puede leer a partir de la línea { $line }, columna { $column }.

problem-beyond-any-solution = Aquí se pide más de lo que puede contener cualquier solución.

problem-text-beyond-models = Juntas, estas cifras quedan fuera del alcance de los modelos, por ejemplo con un día sin sol. Revise el clima y el recipiente.

problem-newer-version = Este plan se guardó con una versión posterior ({ $got }; esta página lee hasta la { $supported }). Recargue la página para obtenerla.

conflict-neck-narrower-than-body = Un cuello de { $got } es más ancho que el cuerpo. Como máximo { $limit }.

conflict-pot-reaches-below-cover = La maceta de rejilla mide { $limit } de alto y no atravesaría un grosor de { $got }.

conflict-pot-narrows-downwards = Una maceta de rejilla no es más ancha en la base que arriba: como máximo { $limit }.

conflict-pot-passes-neck = La maceta no pasa por el cuello de { $limit }.

conflict-pots-fit-cover = Con { $got } no caben los rebordes uno junto a otro. El límite es { $limit }.

conflict-flange-holds-pot = El reborde debe ser más ancho que los { $limit } de la maceta, o esta se cae por el agujero.

conflict-immersion-within-pot = La maceta llega solo { $limit } por debajo de la cubierta; no puede quedar sumergida { $got }.

conflict-pot-above-floor = La maceta tocaría el fondo. Debe medir menos de { $limit }.

conflict-within-rim = { $got } queda por encima del borde. Como máximo { $limit }.

conflict-board-fits = Una placa de { $got } no cabe en el tanque: como máximo { $limit }.

conflict-boards-fit-area = { $got ->
    [one] 1 placa no cabe
   *[other] { $got } placas no caben
} en el tanque: como máximo { $limit }.

conflict-pipe-within-tank = En un tanque tan bajo, este tubo no deja lugar para que las placas floten por encima.

conflict-pipes-fit-width = { $got ->
    [one] 1 tubo no cabe a lo ancho
   *[other] { $got } tubos no caben uno junto a otro
}: como máximo { $limit }.

conflict-pipes-reach-walls = Con tubos tan separados, los de los lados quedan fuera del tanque: como máximo { $limit }.

conflict-wall-within-pipe = Una pared de { $got } llena todo el tubo. Menos de { $limit }.

conflict-one-plant-fits = Con una distancia de { $got } no cabe ni una planta: como máximo { $limit }.

conflict-minimum-below-maximum = La noche no puede ser más cálida que el día, que llega a { $limit }.

conflict-sunshine-within-daylight = En esta latitud y fecha el día dura solo { $limit }.

conflict-radiation-below-extraterrestrial = Es más de lo que llega al límite superior de la atmósfera en esta latitud y fecha: como máximo { $limit }.

conflict-dissolves-in-store = A la temperatura más baja del almacén no se disuelve tanto ({ $got }): como máximo { $limit }. Haga la solución madre menos concentrada o guárdela en un lugar menos frío.

conflict-target-above-raw-water = Su agua, por sí sola, ya tiene { $limit }. El objetivo debe ser mayor.

conflict-nitrogen-forms-make-total = El nitrógeno total es { $got }, pero nitrato, amonio y urea suman { $limit }. Alguno de estos datos no coincide con la bolsa.

conflict-label-within-whole = Lo que nombra esta etiqueta suma al menos el { $got } % de la bolsa, y una bolsa contiene el { $limit } %. Revise cada línea.

conflict-blend-conducts = Nada de lo que nombra esta etiqueta se nota en un medidor de CE. Fije la concentración por el nitrógeno.

conflict-blend-has-nitrogen = Esta etiqueta no tiene nitrógeno. Fije la concentración por la CE.

field-left-empty = Vacío: se usa el valor habitual, { $value }.

unusual-value = Poco común. Lo habitual está entre { $low } y { $high }. Revíselo.

## results

event-planted = Las plántulas se trasplantan a la solución

event-pot-foot-leaves = El nivel queda por debajo del fondo de las macetas; las raíces sumergidas siguen trabajando

event-boards-rest = Las placas descansan en los tubos; se abre el espacio de aire

event-target-reached = Las plantas alcanzan el peso de cosecha

event-used-up = La solución se agota

verdict-sound = adecuado

verdict-boards-sink = las placas se hunden

verdict-tank-too-low = tanque demasiado bajo para este tubo

verdict-rests-at-planting = las placas no flotan al trasplantar

verdict-never-rests = las placas nunca descansan: sin espacio de aire

verdict-runs-out = la solución se agota antes de la cosecha

verdict-gap-too-small = espacio de aire demasiado pequeño

verdict-gap-too-large = espacio de aire demasiado grande para las raíces sumergidas

verdict-too-little-left = queda muy poca solución bajo las raíces

nutrient-nitrogen = nitrógeno

nutrient-phosphorus = fósforo

nutrient-potassium = potasio

nutrient-calcium = calcio

nutrient-magnesium = magnesio

result = El resultado

basis = Estas cifras valen para estos datos. Toque el que no coincida con su caso.
basis-deep = Recipiente de { $depth } de hondo

basis-plants-each = { $plants ->
    [one] 1 planta por recipiente
   *[other] { $plants } plantas por recipiente
}

basis-sown = Siembra: { $date }

basis-sown-today = Siembra: hoy, { $date }

basis-water-rain = Agua de lluvia

basis-water-tap = Agua de la llave

basis-water-analysis = Agua según su análisis

fill = Llene hasta

dissolve = Disuelva

harvest = Cosecha

at-harvest = Queda al cosechar

at-end = Queda al final

print = Imprimir la ficha

glance-heading = Resultado

season = La temporada

findings = Comprobaciones

good-practice = Buenas prácticas para este plan

pipes = Comparación de tubos

nutrients = ¿Alcanza una sola carga para el cultivo?

elements = Qué hay en la solución

chosen-heading = el suyo

enough = alcanza

species = Iones y los pares que forman

doses = Todas las dosis, para un recipiente

targets = Receta: pedido y logrado

stocks = Soluciones madre

mixtures = Las dos soluciones madre juntas, sin diluir

pipe-heads-1 = Tubo

pipe-heads-2 = Evaluación

pipe-heads-3 = Llenado

pipe-heads-4 = Descansa

pipe-heads-5 = Espacio de aire

pipe-heads-6 = Exterior

nutrient-heads-1 = Nutriente

nutrient-heads-2 = En la carga

nutrient-heads-3 = Consumo

element-heads-1 = Elemento

element-heads-2 = Al trasplantar

element-heads-3 = Al final

species-heads-1 = Especie química

species-heads-2 = mmol por kg de agua

dose-heads-1 = Qué

dose-heads-2 = Cuánto

target-heads-1 = Elemento

target-heads-2 = Pedido

target-heads-3 = Logrado

target-heads-4 = Diferencia

stock-heads-1 = Solución madre

stock-heads-2 = Contenido

stock-heads-3 = Un lote alcanza para

stock-heads-4 = Índice de saturación

mixture-heads-1 = Solución madre A

mixture-heads-2 = Solución madre B

mixture-heads-3 = Índice de saturación sin diluir

share-in-per-cent = { $share } %

checks-passed = { $count ->
        [one] 1 comprobación superada
       *[other] { $count } comprobaciones superadas
    }

cautions-below = { $count ->
    [one] Una advertencia: vea las comprobaciones
   *[other] { $count } advertencias: vea las comprobaciones
}

mends-help = Qué puede hacer:

mend-plants = { $plants ->
    [one] Poner 1 planta por recipiente
   *[other] Poner { $plants } plantas por recipiente
}

mend-rain = Si tiene agua de lluvia: usar un { $share } %

fill-below-rim = { $length } por debajo del borde

fill-deep = { $depth } de profundidad, antes de colocar las { $parts ->
        [boards] placas
       *[pots] macetas
    }.

fill-holds = { $volume } de los { $brim } que caben hasta el borde, con un peso de { $mass }.

fill-holds-each = { $volume } de los { $brim } que caben hasta el borde, con un peso de { $mass }: { $each } para cada una de las { $plants } plantas.

fill-rain = De esa cantidad, { $rain } son agua de lluvia.

fill-all-containers = { $containers } recipientes llevan { $volume }.

harvest-not-reached = No se alcanza

harvest-after = { $days ->
        [one] Un día
       *[other] { $days } días
    } después del trasplante el { $planted } (siembra: { $sown }), con plantas de unos { $head }.

harvest-missing = Tras { $days ->
        [one] un día
       *[other] { $days } días
    } de seguimiento, las plantas pesan unos { $head }.

left-uses = El cultivo consume { $each } por planta: { $use_per_mass } de peso fresco. Espacio de aire húmedo: { $gap }.

result-told = Llene con { $volume }, hasta { $mark }. Disuelva { $doses }. Cosecha: { $harvest }. Sobrante: { $left }.

day-dated = Día { $day } · { $date }

rests-never = nunca

rests-on-day = día { $day }

pipes-note-sound = Con cada tamaño se llena de modo que las placas floten { $clear } por encima de los tubos. El espacio de aire resulta del agua que consume el cultivo, así que apenas cambia con el tubo; un tubo más grueso deja más solución. Lo habitual al cosechar es tener de { $low } a { $high } de aire húmedo.

pipes-note-none = Ningún tamaño da un espacio de aire adecuado con este cultivo y este clima. El espacio resulta del agua que consume el cultivo: lo cambian más o menos plantas, un cultivo más largo o más corto, u otro tanque; el tubo por sí solo, no.

nutrient-short = falta

nutrient-short-from = falta desde el día { $day }

target-form = { $element } como { $form ->
        [ammonium] amonio
       *[nitrate] nitrato
    }

stock-serves = { $containers ->
        [one] 1 recipiente
       *[other] { $containers } recipientes
    }, { $heads ->
        [one] 1 planta
       *[other] { $heads } plantas
    }

saturation-gypsum = yeso { $index }

saturation-calcium-phosphate = fosfato de calcio { $index }

saturation-lime = carbonato de calcio { $index }

solution-readings = CE de { $ec } a { $reference } ({ $ec_at_temperature } a su propia temperatura de { $temperature }), pH { $ph }; saturación: { $saturation }.

## season

mark-fill = llenado

mark-air = aire húmedo

mark-never-above = no llenar más

curve-level = Nivel

curve-head = Planta

curve-conductivity = CE

drawing = Corte a escala

day-slider = Días desde el trasplante

play = Iniciar

pause = Pausa

curves = Nivel, planta y CE a lo largo de la temporada; la tabla contiene los mismos valores

curves-axis = días desde el trasplante

season-table = Día por día

season-heads-1 = Día

season-heads-2 = Nivel

season-heads-3 = Espacio de aire

season-heads-4 = Planta

season-heads-5 = CE

season-heads-6 = pH

season-day = Día { $day }

drawn-day = Día { $day }: solución de { $level } de profundidad, espacio de aire húmedo de { $gap }, plantas de unos { $head }, CE de { $ec }.

standing-no-roots = La base de las macetas está en la solución; las raíces aún no han salido.

standing-in-solution = La base de las macetas está en la solución; las raíces sumergidas llegan { $length } por debajo de ella.

standing-above = Las macetas cuelgan por encima de la solución; las raíces aéreas ocupan { $air } y las raíces sumergidas llegan a { $water } de profundidad.

standing-dry = Ni las macetas ni las raíces tocan la solución: las plantas se secan.

failing-roots = Día { $day }: la solución se aleja de las raíces

failing-pots = Día { $day }: las macetas pierden la solución antes de que las raíces la alcancen

change-made = Cambio hecho: { $change }. Ahora: { $figures }.

## doses

material-blend = fertilizante { $grade }

material-stock-a = solución madre A

material-stock-b = solución madre B

material-calcium-nitrate-double-salt = nitrato de calcio granulado ({ $grade })

material-calcium-nitrate-tetrahydrate = nitrato de calcio tetrahidratado

material-magnesium-sulfate = sulfato de magnesio heptahidratado (sal de Epsom)

dose-of = { $dose } de { $material }

salts-in-all = { $count } sales

all-doses-as-often = { $count } recipientes llevan { $count } veces esa cantidad.

all-doses = { $count } recipientes llevan { $doses }.

dose-more = { $ec } a { $reference }, pH { $ph }, { $nitrogen } de nitrógeno. Para un recipiente.

cost-line = Cuesta alrededor de { $charge }, { $head } por planta.

## findings

weight-stop = Alto

weight-caution = Cuidado

weight-safety = Seguridad

weight-sound = Bien

weight-reminder = Buena práctica

finding-lasts = Una sola carga alcanza hasta la cosecha; al final queda alrededor de { $left } en cada recipiente.

finding-runs-out = La solución se agota el día { $day }, antes de la cosecha: falta alrededor de { $short }. Ponga menos plantas, use un recipiente más grande, dé sombra o coseche plantas más pequeñas. No añada nada después: las raíces aéreas se ahogan.

finding-not-reached = En { $days } días las plantas solo llegan a pesar alrededor de { $head }. Se lograría con más luz o calor, con plántulas de más edad o con un peso de cosecha menor.

finding-per-plant = { $volume } de solución por planta; lo habitual antes del trasplante es de { $low } a { $high }.

finding-per-plant-more = Más no hace daño: solo cuesta agua y fertilizante.

finding-immersion = Al trasplantar, cada maceta queda sumergida { $immersion } en la solución; lo habitual es de { $low } a { $high }.

finding-pots-hang-above = Al trasplantar, las macetas cuelgan { $by } por encima de la solución y el sustrato queda seco. Llene más o use macetas más profundas.

finding-overflows = El recipiente se desborda al colocar las macetas o las placas. Llene menos.

finding-gap = Espacio de aire húmedo de { $gap } en la cosecha; lo habitual es de { $low } a { $high }.

finding-boards-sink = Las placas se hunden bajo el peso de macetas y plantas. Use placas más gruesas o menos plantas.

finding-rest-at-planting = Las placas descansan en los tubos desde el primer día. Flotan a partir de un llenado de { $depth } de profundidad.

finding-floats = Al trasplantar, las placas flotan { $clearance } por encima de los tubos.

finding-never-rest = En la cosecha las placas todavía flotan: no se abre espacio de aire y a las raíces puede faltarles aire. Llene menos o use tubos más gruesos.

finding-little-left = En la cosecha, la solución que queda bajo las placas tiene solo { $depth } de profundidad; debe tener al menos { $low }. Con un tubo más grueso queda más.

finding-no-pipe-fits = Aquí ningún tubo estándar da un espacio de aire adecuado. Vea la tabla de tubos.

finding-short = Falta { $nutrient } en la carga: contiene { $supply } y el cultivo toma { $need }.

finding-short-from-day = Desde el día { $day } falta { $nutrient } en la carga: contiene { $supply } y el cultivo toma { $need }.

finding-short-calcium = La mayoría de las mezclas no contiene calcio; lo aporta el nitrato de calcio. Elija soluciones madre A y B, o sales simples.

finding-short-more = El resto debe venir de una solución más concentrada, de otra mezcla o de otra agua.

finding-nutrients-last = El nitrógeno, el fósforo, el potasio, el calcio y el magnesio alcanzan hasta la cosecha.

finding-strong-at-end = La solución se concentra mucho: alrededor de { $ec } al final. Por encima de { $limit } la lechuga empieza a sufrir.

finding-strong-start = Empiece con { $start } como máximo o dé más solución a cada planta.

finding-strong-weaker = Conviene dar más solución a cada planta, más luz o cosechar plantas más pequeñas.

finding-urea = El { $share } del nitrógeno es urea. En una solución quieta alimenta despacio y el medidor no la detecta. Prefiera una mezcla con nitrato.

finding-heavy = Con el recipiente lleno, la solución sola pesa { $mass }. Más de { $limit }, aproximadamente, no es peso para una sola persona: llénelo en el lugar donde va a quedar.

finding-floor-load = La solución ejerce una carga de { $load } sobre lo que la sostiene. Construya sobre suelo firme y nivelado. A partir de { $limit }, aproximadamente, sobre cualquier mesa, terraza elevada, balcón o techo, consulte antes a una persona competente y cumpla las normas locales.

finding-open-water = Un niño pequeño puede ahogarse en { $units ->
    [us] pocas pulgadas
   *[metric] pocos centímetros
} de agua. Mantenga el tanque cubierto y cercado, y nunca deje a los niños solos cerca de él.

finding-salts = Guarde el fertilizante y la solución fuera del alcance de niños y animales, cerrados y etiquetados. Siga la etiqueta del producto. Lávese las manos después de mezclar.

finding-electricity = Lámparas y cables cerca del agua: use equipo hecho para lugares mojados, en un tomacorriente protegido (con interruptor diferencial), muy por encima del tanque y con una curva de goteo en el cable, y deje la instalación a una persona autorizada.

finding-stocks-apart = Nunca junte sin diluir las soluciones madre A y B: se formaría un precipitado de { $minerals }.

finding-stocks-thinned = Solo se mantienen transparentes si se diluyen { $times ->
    [one] 1 vez
   *[other] { $times } veces
}.

finding-stocks-in-turn = Vierta primero una en el agua del recipiente y revuelva; solo después, la otra.

finding-acid = Ácido: use guantes y protección para los ojos, manténgalo fuera del alcance de los niños y vierta siempre el ácido en el agua, nunca el agua en el ácido. Añada una parte, revuelva, mida el pH y continúe. Siga la etiqueta.

finding-stock-clear = La { $stock } se mantiene transparente a la temperatura más baja del almacén; sus sales son el { $share } % de lo que puede disolverse a esa temperatura.

finding-stock-over-full = La { $stock } no se mantiene transparente: sus sales son el { $share } % de lo que puede disolverse a la temperatura más baja del almacén.

finding-stock-falls-out = La { $stock } no se mantiene transparente: se forma un precipitado de { $minerals }.

finding-stock-other-salts = Hacerla menos concentrada no ayuda; use otras sales.

finding-stock-weaker = Prepárela como máximo al { $share } % de esta concentración y vierta más cantidad, o guárdela en un lugar menos frío.

finding-fitting-strength = En este clima, con una carga de { $low } a { $high } no faltan nutrientes ni sobra sal al final.

finding-no-fitting-strength = Ninguna concentración sirve: hacen falta { $low } o más para alimentar el cultivo hasta el final, y { $high } o menos para que al final no haya demasiada sal. Con { $fewer ->
    [yes] menos plantas por recipiente
   *[no] más solución por planta o plantas más pequeñas
} se arreglan las dos cosas.

finding-target-missed = Las sales disponibles no cumplen la receta en { $nutrient }{ $form ->
    [nitrate] {" en forma de nitrato"}
    [ammonium] {" en forma de amonio"}
   *[none] {""}
}: dan { $reached } y la receta pide { $target }.

finding-label-charges = La etiqueta de la mezcla no cuadra: nitrato, fosfato y sulfato suman { $anions } de carga eléctrica por gramo; potasio, amonio, calcio y magnesio, solo { $cations }. Compare el nitrato y el fosfato con la bolsa.

finding-ph = pH { $ph } después de mezclar; a las hortalizas de hoja les conviene de { $low } a { $high }.

finding-ph-low = El agua pura no amortigua el pH: una parte de agua de la llave lo sube, y también sube a medida que el cultivo se alimenta.

finding-ph-high = Puede plantar de todos modos: puede que amarilleen las hojas nuevas, porque la planta no aprovecha bien el hierro.
finding-ph-lower = El pH baja con una parte de agua de lluvia, o con un ácido añadido con medidor o papel de pH.

finding-ph-drift = A medida que el cultivo se alimenta, el pH pasa de { $from } a cerca de { $to } (como máximo: las raíces y el aire amortiguan el cambio).

finding-ph-steady = El pH se mantendría estable con un fertilizante que tenga el { $steady } de su nitrógeno en forma de amonio; este tiene el { $now }.

finding-ph-measure = No hay nada que hacer antes de trasplantar; si las hojas nuevas se ponen amarillas, mida el pH.

finding-no-acid-needed = No hace falta ácido: el pH ya es { $ph }.

finding-falls-out = Puede formarse { $minerals }: un polvo blanco en el fondo, que ya no alimenta a las plantas. Con agua de lluvia o un pH más bajo se mantiene disuelto.

finding-analysis-agrees = El análisis del agua es coherente.

finding-analysis-disagrees = El análisis del agua no es coherente.

finding-analysis-charge = Los cationes y los aniones difieren en un { $share }.

finding-analysis-ec = La CE medida es el { $share } de la que corresponde a sus iones.

finding-analysis-look = Busque una línea que falte o que esté mal escrita.

finding-water = { $item }: { $amount } en su agua; hasta { $limit } no hay restricción.

finding-water-severe = Restricción severa: no use esta agua sin mezclarla con otra.

finding-water-moderate = Restricción de leve a moderada.

finding-dilute-water = Con un { $share } de su agua y el resto de agua de lluvia se cumplen todos los límites.

finding-salt-yield = El cloruro de sodio que hay en la solución al final permite alrededor del { $share } del rendimiento completo.

finding-grow-on = Cultivo { $crop }: reponga { $refill } de agua de origen y el { $add_back } del fertilizante de la primera carga (entonces, CE de { $ec } y sodio de { $sodium }).

finding-grow-on-drain = Es mejor vaciar y empezar de nuevo: hay demasiada sal. Esparza la solución gastada en suelo que pueda aprovecharla, nunca en un arroyo ni en un desagüe pluvial.

finding-warm = La media de la temporada, { $mean }, es alta para este cultivo; por encima de { $limit } son comunes la floración prematura, las hojas amargas y la quemadura del borde de la hoja. Dé sombra o cultive en una época más fresca.

finding-roots-follow = Las raíces salen de las macetas y llegan a la solución a más tardar el día { $day }, antes de que las macetas queden por encima de ella el día { $lost }, y la siguen al bajar.

finding-roots-reach = Las raíces salen de las macetas y llegan a la solución a más tardar el día { $day }, y las macetas siguen dentro de ella hasta el final.

finding-roots-stand = Las macetas permanecen en la solución toda la temporada.

finding-contact-lost = El día { $day } las macetas quedan por encima de la solución y las raíces no han llegado a ella: se quedan a { $short }. El sustrato se seca y, con él, las plantas.

finding-roots-hang = El día { $day } la solución se aleja de las raíces: cuelgan { $short } por encima de ella.

finding-warm-solution = La solución está tibia, a unos { $solution }, y contiene como máximo { $oxygen } de oxígeno. Por encima de unos { $limit } las raíces se pudren con más facilidad. Dé sombra al recipiente, píntelo de blanco o envuélvalo, y mantenga abierto el espacio de aire húmedo.

finding-mosquitoes = En la solución abierta pueden criarse mosquitos: a { $mean } el paso de huevo a adulto tarda aproximadamente de { $least } a { $most }, y la solución permanece { $season }. Cierre toda abertura, selle la cubierta y ponga malla fina donde deba quedar abierto; en tanques grandes ayudan los peces pequeños; o use un larvicida biológico cuya etiqueta indique este uso. Siga su etiqueta y las leyes locales.

finding-algae-in-clear-wall = La luz que pasa por una pared transparente hace crecer algas, que quitan oxígeno y alimento a las raíces. Pinte o envuelva la botella para que no entre luz.

finding-algae-at-edges = Las algas crecen donde cae luz sobre la solución junto a las placas. Cierre las aberturas con tiras de placa o de plástico oscuro que se muevan con las placas.

finding-midday-wilt = Espere marchitez al mediodía: a { $max } el aire es muy seco (le faltan { $deficit } kPa de vapor; por encima de { $limit } las hojas pierden más de lo que traen las raíces). Las hojas que se recuperan antes del anochecer no sufren daño; si están marchitas por la mañana, las raíces tienen problemas. Dé sombra al mediodía.

finding-tip-burn = Es probable la quemadura del borde de la hoja: { $light } de luz al día (ocurre desde unos { $limit }), con calor ({ $mean }) y aire húmedo ({ $humidity }). Dé sombra, mueva el aire sobre las hojas, coseche plantas más pequeñas.

finding-rain-dilutes = Evite que la lluvia entre en el recipiente, también la que el viento trae de lado. La lluvia diluye la solución, y un nivel que sube ahoga las raíces aéreas.

finding-drain-interval = Vacíe el recipiente y lávelo con cepillo después de { $crops ->
    [one] cada cultivo
   *[other] { $crops } cultivos
}, más o menos cada { $days } días. Déjelo secar antes de la siguiente carga.

finding-food-container = Use solo recipientes hechos para alimentos o agua potable. Nunca uno que haya contenido plaguicida, combustible, pintura o cualquier otro producto químico, por bien enjuagado que esté.

finding-tank-liner = Forre el tanque con lona impermeable hecha para alimentos, agua potable o estanques de peces, y mantenga la madera tratada lejos de la solución.

finding-clean-harvest = Coseche con las manos y el cuchillo limpios, evite que las hojas toquen la solución y lávelas con agua potable antes de comerlas.

finding-spent-solution = La solución gastada suma alrededor de { $volume } en total. Viértala poco a poco en suelo con plantas que puedan aprovecharla. Nunca en un arroyo, un estanque ni un desagüe pluvial. Siga las normas locales.

finding-dim = Hay poca luz: { $light } al día; por debajo de unos { $limit } las plantas se estiran y crecen despacio.

finding-brighter-than-clear-sky = La radiación solar es mayor que la de un cielo despejado en esta latitud y fecha. Revísela.

finding-not-validated = El modelo de crecimiento se hizo y se probó para lechuga. Para este cultivo, las fechas y las cantidades de agua son solo una guía aproximada.

roots-mends-none = Ningún cambio de llenado, maceta o tubo lo corrige por sí solo: use otro recipiente, o menos plantas y más pequeñas.

roots-mends-any = Cualquiera de estos cambios lo corrige: { $ways }.

roots-way-fill-depth = llenar hasta { $depth } de profundidad

roots-way-pot-height = usar macetas de { $height } de profundidad con el mismo llenado

roots-way-pipe = colocar tubos de { $across }

roots-way-pipe-and-fill = colocar tubos de { $across } y recalcular el llenado

mineral-gypsum = yeso

mineral-calcium-phosphate = fosfato de calcio

mineral-lime = carbonato de calcio

water-item-salinity = Salinidad (FAO 29)

water-item-sodium-adsorption = Sodio frente a calcio (FAO 29)

water-item-chloride-toxicity = Cloruro (FAO 29)

water-item-boron = Boro (FAO 29)

water-item-nitrate-nitrogen = Nitrógeno nítrico (FAO 29; alimenta, cuéntelo)

water-item-bicarbonate = Bicarbonato (FAO 29)

water-item-ph = pH (FAO 29)

water-item-sodium = Sodio

water-item-chloride = Cloruro

water-item-sulfate = Sulfato

water-item-alkalinity = Alcalinidad

water-item-calcium = Calcio

water-item-hardness = Dureza

water-amount-milliequivalents = { $amount } meq/L

water-amount-as-carbonate = { $amount } mg/L de CaCO3

## workings

working-of-fill = Cómo se calcula el llenado

working-of-dose = Cómo se calcula la dosis

working-of-harvest = Cómo se calcula la cosecha

working-of-water = Cómo se calcula el agua

working-of-solution = Cómo se calculan la CE, el pH y la saturación

working-of-nutrients = Cómo se calculan los nutrientes

working-of-stocks = Cómo se calculan las soluciones madre

working-of-boards = Cómo se calculan las placas y los tubos

working-of-days = Cómo se calcula cada día

working-of-recipe = Cómo se calcula la receta

working-of-strength = Cómo se calcula la concentración adecuada

working-of-raw-water = Cómo se evalúa el agua de origen

working-of-drift = Cómo se calcula la deriva del pH

working-of-salt = Cómo se calcula la pérdida por sal

working-of-next-crops = Cómo se calculan los próximos cultivos

working-of-load = Cómo se calcula el peso

working-of-roots = Cómo se calculan las raíces

working-of-mosquitoes = Cómo se calcula la cría de mosquitos

inputs-stocks = Concentración de cada solución madre, volumen que usted prepara y temperatura más baja del almacén.

inputs-recipe = Objetivos de la receta multiplicados por su concentración, menos lo que aporta el agua de origen; composición de cada sal de su lista.

inputs-salt = Sodio y cloruro del agua de origen y del fertilizante, y el agua que sale por el cultivo mientras estos se quedan.

working-parts-1 = A partir de

working-parts-2 = Mediante

working-parts-3 = Según

working-parts-4 = Certeza

inputs-fill = Sus medidas de recipiente, cubierta y macetas. Con todo en su lugar, la solución llega a { $level } por encima del fondo y las macetas quedan sumergidas { $immersion }; sin ellas, el mismo volumen de { $volume } alcanza { $depth } de profundidad.

inputs-dose = { $volume } de solución, agua de origen de { $raw } y la concentración que usted pidió; la solución marca entonces { $solution }, con { $nitrogen } de nitrógeno. Eso requiere { $doses }.

inputs-harvest = Temperatura media de { $temperature }, luz de { $light } al día sobre las plantas, edad de la plántula, distancia entre plantas, factor de crecimiento y { $head } como peso de la planta al final.

inputs-water = { $volume } al trasplantar; el cultivo consume { $drawn } hasta el final (por las aberturas: { $evaporated }); { $use_per_mass } de peso fresco.

inputs-solution = Todos los iones de fertilizante, ácido y agua de origen. Fuerza iónica de { $ionic_strength } mol/kg; pH { $ph }; saturación: { $saturation }.

inputs-nutrients = Materia seca de { $plants ->
        [one] 1 planta de { $head }
       *[other] { $plants } plantas de { $head } cada una
    } al final, y el contenido de nutrientes del tejido.

inputs-days = { $volume } de solución al trasplantar, el agua consumida cada día, la forma del recipiente y lo que absorbe el cultivo; { $days ->
        [one] 1 día
       *[other] { $days } días
    } en total.

inputs-strength = Consumo de agua de { $use_per_mass } de peso fresco, absorción del cultivo y { $solution } al trasplantar; el final de la temporada con cada concentración de prueba.

inputs-raw-water = Sus datos del agua de origen; de ellos se calcula una CE de { $conductivity }.

inputs-drift = Cationes y aniones que absorbe el cultivo, y un pH de { $ph } al trasplantar.

inputs-next-crops = Lo que queda al cosechar: { $volume }, con una CE de { $solution }.

inputs-load = { $volume } en un recipiente, con un contenido de { $mass }, sobre el área de su fondo.

inputs-roots = Puntas de raíz que crecen { $growth } al día a la temperatura media de la temporada; { $oxygen } de oxígeno en la superficie; el nivel de cada día.

inputs-mosquitoes = La solución a la temperatura media del aire, { $temperature }.

inputs-boards = Una placa con macetas pesa { $mass } al trasplantar y tiene un calado de { $draught }; el nivel baja con el agua consumida.

working-fill-by = Volumen de la forma hasta el nivel, menos lo que desplazan macetas, placas y tubos; se invierte con el método de Newton.

working-fill-after = Geometría del espacio; interpolación cúbica monótona para un recipiente medido con una jarra (Fritsch y Butland 1984).

working-fill-sure = Tan seguro como su cinta métrica.

working-dose-by = Composición de la etiqueta o de la sal multiplicada por los gramos, hasta que la CE o el nitrógeno llegue al objetivo; las sales simples, por mínimos cuadrados acotados sobre la receta.

working-dose-after = Pesos atómicos estándar de la IUPAC; P = { $phosphorus } P2O5, K = { $potassium } K2O; Lawson y Hanson 1974.

working-dose-sure = Tan seguro como la etiqueta y la balanza. Si no se conoce el agua de origen, se toma como agua de bicarbonato de calcio de la misma CE.

working-harvest-by = Dos reservas de materia seca, azúcares y estructura; fotosíntesis según luz, dióxido de carbono y temperatura, hora por hora, multiplicada por el factor de crecimiento.

working-harvest-after = Van Henten 1994, con sus parámetros publicados; aire y luz según el Estudio FAO Riego y Drenaje 56; materia seca según las tablas de composición de alimentos del USDA.

working-harvest-sure = Validado para lechuga en invernadero; cerca de una semana de más o de menos.

working-water-by = Balance de energía del dosel del cultivo: flujos de calor y vapor frente a las resistencias estomática y aerodinámica; macetas y bordes evaporan { $factor } veces la referencia.

working-water-after = Graamans y otros 2017; Estudio FAO Riego y Drenaje 56.

working-water-sure = Del 20 al 30 % de más o de menos; un período caluroso y seco consume más que la media.

working-solution-by = Ley de acción de masas de iones y pares iónicos, con actividades, en contacto con el dióxido de carbono del aire; conductividad a partir de las especies; índice de saturación = logaritmo del producto de actividades dividido entre el producto de solubilidad.

working-solution-after = Truesdell y Jones 1974; Robinson y Stokes 1959; McCleskey y otros 2012; Nordstrom y otros 1990. Comprobado con PHREEQC.

working-solution-sure = CE con un error de hasta el 3 % en una solución conocida y el 10 % según una etiqueta; pH con un error de hasta { $error } en agua poco amortiguada.

working-nutrients-by = Materia seca multiplicada por el contenido del tejido, frente a los gramos que aportan el fertilizante y el agua de origen.

working-nutrients-after = Tablas de composición de alimentos del USDA, más el nitrato.

working-nutrients-sure = Alrededor del 30 % de más o de menos.

working-stocks-by = Cada sal frente a su solubilidad a la temperatura más baja, y la saturación de yeso y fosfato de calcio en cada solución madre y en las dos juntas.

working-stocks-after = Solubilidades del CRC Handbook; equilibrios como en el tanque.

working-stocks-sure = Solubilidad con un error de hasta el 5 % para una sal sola; índice de saturación con un error de hasta { $error }.

working-boards-by = El agua desplazada equivale a la masa que flota; espacio de aire = altura de los tubos menos el nivel.

working-boards-after = Arquímedes; densidades de la espuma rígida de ASTM C578; diámetros de tubos de ISO 161-1, ASTM D1785, D2729 y D3034.

working-boards-sure = Cerca de { $error } sobre un fondo nivelado; la flecha y el desnivel del fondo se indican aparte.

working-days-by = Solución de un día = la del día anterior menos transpiración y evaporación; nivel según la forma del recipiente; cada nutriente menos lo absorbido; CE y pH según los iones que quedan.

working-days-after = Balance de masa con las fuentes de cosecha, agua, nutrientes y solución.

working-days-sure = Tan seguro como el agua y la cosecha: del 20 al 30 %, y cerca de una semana.

working-recipe-by = Gramos de cada sal, ninguno por debajo de cero, que dan la menor suma de los cuadrados de las diferencias, cada una relativa a su objetivo.

working-recipe-after = Lawson y Hanson 1974, mínimos cuadrados no negativos; recetas tal como se publicaron, con su nombre en la lista.

working-recipe-sure = Exacto para sales puras; tan seguro como su pureza.

working-strength-by = Desde la más baja con la que ningún nutriente se agota antes de la cosecha hasta la más alta cuya CE al cosechar todavía soporta el cultivo.

working-strength-after = Balance de masa de la temporada; contenidos del tejido según las tablas de composición de alimentos del USDA.

working-strength-sure = Alrededor del 30 % de más o de menos, como el consumo de agua y la absorción.

working-raw-water-by = Cada valor frente a su límite; cargas de los cationes frente a las de los aniones; CE calculada frente a la medida; la proporción de agua de lluvia que deja cada valor por debajo de su límite.

working-raw-water-after = Estudio FAO Riego y Drenaje 29 (Ayers y Westcot 1985), cuadro 1; práctica habitual con la alcalinidad en el cultivo sin suelo.

working-raw-water-sure = Tan seguro como el análisis.

working-drift-by = Cada carga que absorben las raíces se compensa con una de hidrógeno o de bicarbonato; el nitrato sube el pH, el amonio lo baja.

working-drift-after = Balance de cargas de la absorción; equilibrios como en el tanque.

working-drift-sure = El sentido es seguro; la magnitud es un límite máximo: las raíces y su respiración la amortiguan.

working-salt-by = El rendimiento baja una proporción fija por cada unidad de salinidad por encima de un umbral.

working-salt-after = Maas y Hoffman 1977; de la parte de la CE que aportan sodio y cloruro, la mitad cuenta como el extracto de suelo que ellos midieron.

working-salt-sure = Unos pocos puntos porcentuales del rendimiento.

working-next-crops-by = Se rellena con agua de origen hasta la primera marca y se repone el nitrógeno que toma el próximo cultivo; se vacía cuando el sodio, el cloruro o la CE supera su límite.

working-next-crops-after = Balance de masa de la temporada.

working-next-crops-sure = Mida la CE antes de cada cultivo: vale más que el pronóstico.

working-roots-by = Las puntas parten de un cubo de sustrato de { $plug }, crecen { $growth } al día por cada grado por encima de { $from } y se detienen donde les llegan por difusión menos de 2 mg/L de oxígeno.

working-roots-after = Grados día según Kage y otros 2000; difusión según Han y Bartels 1996; los valores para la lechuga, el cubo de sustrato y el oxígeno mínimo son supuestos.

working-roots-sure = Es una guía: la solución real se mueve un poco de noche, así que las raíces pueden llegar más hondo.

working-mosquitoes-by = Velocidad de desarrollo a temperatura constante, de huevo a adulto.

working-mosquitoes-after = Rueda y otros 1990, para Culex quinquefasciatus y Aedes aegypti.

working-mosquitoes-sure = Otras especies y las larvas con poco alimento tardan más, hasta el triple.

working-load-by = Volumen por densidad; masa dividida entre el área.

working-load-after = Densidad del agua según Tanaka y otros 2001; la carga que soporta un piso varía, así que pregunte a quien conozca el edificio.

working-load-sure = Con un error de hasta el 2 %, sin contar recipiente, placas ni cultivo.

## card

card = Ficha de cultivo

card-waits = El plan tiene datos por corregir. No hay ficha hasta que se corrijan.

card-prepare-heading = Prepare

card-fill = Marca de llenado

card-mix-heading = Mezcle en este orden

card-dates-heading = Fechas

card-rule = Que el nivel nunca vuelva a subir

card-rule-text = El nivel solo puede bajar. En el espacio de aire húmedo que se abre crecen raíces aéreas; si el nivel vuelve a subir, se ahogan. No deje que entre lluvia. Si la solución no va a alcanzar hasta la cosecha, añada agua sola, poco a poco y nunca más de lo que las plantas hayan bebido desde el día anterior: así nunca queda más alta que entonces.

card-watch = Vigile

card-cautions = Cuidado

card-notes = Notas

watch-lines-1 = Mosquitos: selle toda abertura de más de { $gap }; ponga malla en lo que deba quedar abierto.

watch-lines-2 = Agua verde: está entrando luz. Tape por donde entra.

watch-lines-3 = Si las hojas se marchitan al mediodía con sol fuerte y se recuperan al atardecer, no se preocupe; si amanecen marchitas, revise las raíces.

watch-lines-4 = Limo marrón o mal olor en las raíces: saque la planta y lave el recipiente.

watch-lines-5 = Cada dos semanas mida desde el borde hacia abajo. Si ha bajado desde la marca de llenado un tercio más que en la lista de arriba, anótelo; si la solución no va a alcanzar, añada agua como se indica en el recuadro o coseche antes.

watch-lines-6 = Hojas nuevas amarillas: mida el pH, con tiras de papel si no tiene medidor; si es alto, la planta no aprovecha bien el hierro.

card-levels-heading = Nivel por debajo del borde

card-level = { $date }: { $level }

card-prepare-boards = Un recipiente apto para alimentos que nunca haya contenido productos químicos, lavado y que no deje pasar la luz; placas lavadas, tubos colocados y nivelados.

card-prepare-neck = Un recipiente apto para alimentos que nunca haya contenido productos químicos, lavado y que no deje pasar la luz, con un cuello donde encaje la maceta de rejilla.

card-prepare-cover = Un recipiente apto para alimentos que nunca haya contenido productos químicos, lavado y que no deje pasar la luz. En la tapa, { $plants ->
    [one] un agujero de { $hole } de diámetro; la maceta cuelga
   *[other] { $plants } agujeros de { $hole } de diámetro, bien repartidos; cada maceta cuelga
} de su borde.

card-prepare-pots-on-boards = { $plants ->
    [one] 1 maceta de rejilla de { $height } de alto con sustrato húmedo, { $each } por placa.
   *[other] { $plants } macetas de rejilla de { $height } de alto con sustrato húmedo, { $each } por placa.
}

card-prepare-pots = { $plants ->
    [one] 1 maceta de rejilla de { $height } de alto con sustrato húmedo, como fibra de coco o perlita.
   *[other] { $plants } macetas de rejilla de { $height } de alto con sustrato húmedo, como fibra de coco o perlita.
}
card-prepare-seeds = Semillas: dos por maceta, húmedas y con luz hasta el trasplante; deje la plántula más fuerte.
card-prepare-blend = Un fertilizante que se disuelva por completo en agua (pruebe una pizca en un vaso); los gránulos de liberación lenta no sirven aquí.

card-stock-part = { $strength } de { $material }

card-stock = { $stock }: { $parts }.

card-prepare-all = Para { $containers } recipientes: { $volume } de solución en total.

card-dose-for = { $plants ->
    [one] Para un recipiente con una planta.
   *[other] Para un recipiente con { $plants } plantas.
}
card-dose-each = Otro volumen: { $strength }.

card-mark-more = { $depth } desde el fondo de un recipiente de { $height } de hondo, { $volume } en total. Haga la marca antes de poner { $put_in ->
    [boards] las placas
   *[pots] las macetas
}; después, las macetas quedan sumergidas { $immersion } en la solución.

card-mix-half = Llene más o menos hasta la mitad con agua de la llave o de pozo (CE de unos { $ec }).

card-mix-half-pure = Llene más o menos hasta la mitad con agua de lluvia, o igual de pura.

card-mix-rain = Vierta { $rain } de agua de lluvia.

card-mix-rain-and-tap = Vierta { $rain } de agua de lluvia y luego agua de la llave o de pozo, más o menos hasta la mitad.

card-mix-only = Pese { $dose } de { $material }. Disuelva todo en una jarra con agua, revolviendo hasta que quede transparente, y viértalo en el recipiente.

card-mix-first-stock = Vierta { $dose } de { $material } y revuelva bien.

card-mix-second-stock = Solo después vierta { $dose } de { $material } y revuelva bien.

card-mix-salt = { $dose } de { $material }

card-mix-first-jug = Disuelva en una jarra, vierta en el recipiente y revuelva: { $salts }.

card-mix-second-jug = Solo después, haga lo mismo en una segunda jarra: { $salts }.

card-mix-fill = Llene hasta la marca con la misma agua y revuelva.

card-mix-fill-tap = Llene hasta la marca con agua de la llave o de pozo y revuelva.

card-mix-acid = Guantes y protección para los ojos: añada como máximo { $dose } de { $material }, poco a poco y revolviendo, hasta llegar a pH { $ph }. Sin medidor ni papel de pH, no lo añada.

card-mix-measure = Mida, si tiene medidor: CE de unos { $ec } a { $reference }, pH de unos { $ph }. ¿Marca de más? Quite un poco de solución y ponga agua. ¿Marca de menos? Añada un poco más de fertilizante disuelto. Solo ahora, antes de plantar.

card-date-sow = Sembrar

card-date-plant = Llenar, mezclar y trasplantar

card-date-boards-rest = Las placas descansan, aprox.

card-date-harvest = Cosechar, aprox.

card-date-day = { $date } (día { $day })

card-date-no-harvest = no se alcanza

card-expect = Al final se espera: plantas de unos { $head }, { $left } de solución restante (para suelo con plantas, nunca un arroyo ni un desagüe) y un espacio de aire húmedo de { $gap }.

## calendar

calendar = Calendario

save-calendar = Guardar para un programa de calendario

calendar-file = slackwater.ics

succession-heading = Plantas cada semana

succession-heads-1 = Grupo

succession-heads-2 = Sembrar

succession-heads-3 = Trasplantar

succession-heads-4 = Cosechar desde

calendar-seeding = Sembrar

calendar-seeding-more = Siembre las semillas en cubos de sustrato.

calendar-transplanting = Llenar, mezclar y trasplantar

calendar-transplanting-more = Llene hasta la marca, mezcle el fertilizante con el agua y coloque las macetas en su lugar.

calendar-boards-rest = Las placas llegan a descansar

calendar-boards-rest-more = Desde ahora se abre el espacio de aire húmedo bajo las placas. No añada nada.

calendar-pots-leave = Las macetas quedan por encima de la solución; es lo normal

calendar-pots-leave-more = Las raíces sumergidas siguen trabajando. No añada nada: las raíces aéreas se ahogan.

calendar-harvest = Cosechar, en el plazo de una semana

calendar-harvest-more = Manos limpias, cuchillo limpio y una semana para terminar.

calendar-clean = Vaciar y limpiar

calendar-clean-more = Esparza lo que queda sobre un suelo que pueda aprovecharlo; nunca en un arroyo ni en un desagüe pluvial.

calendar-refill = Reponer para el próximo cultivo

calendar-refill-more = Añada el agua de origen y el fertilizante que indica el plan, hasta que las placas o las macetas queden como en el primer trasplante.

calendar-seed-next = Sembrar el próximo cultivo

calendar-seed-next-more = A tiempo para el próximo trasplante.

calendar-replant = Trasplantar el próximo cultivo

calendar-replant-more = Como la primera vez.

succession-containers = Para { $heads ->
    [one] 1 planta
   *[other] { $heads } plantas
} por semana { $containers ->
    [one] se necesita 1 recipiente como este
   *[other] se necesitan { $containers } recipientes como este, por turnos
}: plante { $each_week } cada semana y vuelva a plantar cada uno a los { $days } días.

succession-or-tank = Para { $heads ->
    [one] 1 planta
   *[other] { $heads } plantas
} por semana { $containers ->
    [one] se necesita 1 recipiente como este
   *[other] se necesitan { $containers } recipientes como este, por turnos
}, o un tanque de { $tank } de largo, tan ancho como este: plante { $each_week } cada semana y vuelva a plantar cada uno a los { $days } días.

## handing_on

link-error-not-alink = El final de esta dirección no es un enlace a un plan. Pida el enlace otra vez.

link-error-damaged = Este enlace se dañó en el camino: faltan letras o algunas cambiaron. Pídalo otra vez, o pida un archivo.

link-error-newer-version = Este enlace se creó con una versión posterior de esta página. Recargue la página con conexión a internet y abra el enlace de nuevo.

file-error-not-plans = Este archivo no contiene planes.

file-error-too-long = Este archivo es demasiado grande para ser un archivo de planes, o no se pudo leer.

file-error-newer-version = Este archivo se escribió con una versión posterior de esta página. Recargue la página con conexión a internet y abra el archivo de nuevo. Sus propios planes no se tocaron.

hand-on = Compartir el plan

hand-on-more = El enlace contiene el plan completo. Quien lo abre ve primero una vista previa. No se envía nada a ningún servidor.

link = Enlace a este plan

copy = Copiar enlace

share = Compartir

copied = Copiado.

not-copied = El navegador no copió el enlace. Selecciónelo y cópielo usted.

code = Código QR del enlace

no-link = Este plan tiene demasiado texto para un enlace. Compártalo como archivo.

no-code = Este enlace es demasiado largo para un código que se pueda escanear.

scan = Escanee para abrir este plan

from-link = Un plan de un enlace

from-file = Planes de un archivo

keep-new = Conservar como plan nuevo

do-not-keep = No conservar

add-them = Añadir a mis planes

replace-all = Reemplazar todos mis planes

replace-more = Los planes que usted ya tiene no se añaden dos veces. Al reemplazar, sus planes actuales se guardan antes en un archivo.

save-plan = Guardar este plan en un archivo

save-all = Guardar todos los planes en un archivo

open-file = Abrir un archivo de planes

plan-file = slackwater-plan.json

plans-file = slackwater-planes.json

elsewhere = Sus planes se cambiaron en otra pestaña. Desde esta ya no se conserva nada hasta que usted elija.

take-theirs = Usar los planes de la otra pestaña

keep-mine = Conservar los planes de esta pestaña

set-aside-newer = Los planes conservados en este navegador se escribieron con una versión posterior de esta página y no se pudieron leer aquí. Se apartaron sin cambios; guárdelos en un archivo antes de continuar.

forget-set-aside = Ya se guardó: quitar de este navegador

link-error-too-long = Este enlace tiene más de { $most } letras, más de las que ocupa cualquier plan. Pídalo otra vez, o pida un archivo.

file-error-line = Este archivo no contiene planes que se puedan leer: revise la línea { $line }.

## handout

for-name = Nombre

small-rule = Nunca suba el nivel después: las raíces aéreas se ahogan. Que no entren luz, lluvia ni mosquitos. La mezcla la hace una persona adulta; lávese las manos.

group-get = Qué conseguir y pesar, en total

to-prepare = Soluciones madre por preparar, cada una en su propia jarra

group-each = Para cada recipiente, en este orden

weekly-record = Semana a semana

record-how = Por la mañana, mida desde el borde hacia abajo, en línea recta, hasta la solución. Lo esperado es un pronóstico: lo que cuenta es lo que usted mide.

record-harvest = Plantas cosechadas, una por una

group-heads-1 = Qué

group-heads-2 = Cuánto

group-care-1 = Las sales irritan los ojos y la piel, los ácidos queman: guantes y gafas protectoras, solo personas adultas, los niños a distancia. El ácido se echa al agua, nunca el agua al ácido. Siga las etiquetas de los productos.

group-care-2 = Un { $units ->
    [us] galón
   *[metric] litro
} de agua pesa { $weight }. Llene los recipientes donde se van a quedar.

group-care-3 = Tape todo recipiente con agua donde haya niños pequeños.

record-heads-1 = Día

record-heads-2 = Fecha

record-heads-3 = Esperado bajo el borde

record-heads-4 = CE esperada

record-heads-5 = Bajo el borde

record-heads-6 = CE

record-heads-7 = Temperatura

record-heads-8 = Qué observa

small-cards-of = { $cards } fichas para { $containers } recipientes: imprima más.

small-mix-line = { $volume } de agua con { $doses }.

group-line = { $containers ->
    [one] 1 recipiente
   *[other] { $containers } recipientes
}, { $plants ->
    [one] 1 maceta de rejilla con su plántula
   *[other] { $plants } macetas de rejilla con sus plántulas
} en total; cada recipiente se llena hasta { $below_rim } por debajo del borde.

group-get-water = Agua

group-stock-part = { $dose } de { $material }

group-stock = { $stock }: disuelva { $parts } en agua y complete hasta { $volume }. Añada { $each } a cada recipiente.

## chances

chances = ¿Cuánta confianza merece el resultado?

chances-under-heading = El mismo plan en { $seasons } temporadas, cada una con otro tiempo día a día y con otra suerte en lo que los modelos no saben. Las probabilidades valen para temporadas así, no para tormentas, plagas ni errores. Una de cada diez temporadas queda por debajo del valor «bajo», y una de cada diez por encima del valor «alto».

looking = Buscando qué lo haría seguro.

seasons-so-far = { $done } de { $all } temporadas hasta ahora.

chances-beyond = Los modelos no llegan tan lejos: no se pueden dar probabilidades.

chances-assumed = Qué cambia de una temporada a otra

chances-heads-2 = Bajo

chances-heads-3 = Medio

chances-heads-4 = Alto

chances-lasts = La solución dura hasta la cosecha en { $count } de cada 100 temporadas así.

chances-feeds = Lo disuelto alimenta al cultivo hasta la cosecha en { $count } de cada 100.

chances-used-up = Cuando no dura, la última gota se consume hacia el día { $day } después del trasplante.

chances-row-harvest = Listo para cosechar

chances-row-head = Una planta

chances-row-water = Consumo por recipiente

chances-row-water-use = Agua por peso de plantas

chances-row-gap = Aire húmedo al final

chances-row-ec = CE al final

offers-heading = { $aim ->
        [lasts] Para que el agua dure en { $wanted } de cada 100
       *[feeds] Para que los nutrientes duren en { $wanted } de cada 100
    }

no-offer-needed = No hace falta cambiar nada.

no-offer-enough = Ningún cambio por sí solo basta dentro de los límites habituales.

spreads-weather = Tiempo: la sucesión de los días sigue a Richardson y Wright (1984), matrices A y B. Supuesto: las temperaturas máximas y mínimas difieren en { $warmth } (la quinta parte en un cuarto con lámparas), la luz en { $light } % y la humedad en { $humidity } puntos; cada cifra es una desviación estándar.

spreads-plants = Plantas: el crecimiento, el agua consumida y los nutrientes absorbidos difieren en { $growth } %, { $water } % y { $uptake } %, en ese orden (supuesto; los modelos publicados se desviaron entre un 9 y un 21 % donde se pusieron a prueba).

spreads-seed = Las temporadas se sortean a partir de un número fijo: el mismo plan da las mismas probabilidades en cualquier dispositivo.

## building

# Folded group of fields.
group-build = Cómo se construye

# Heading.
building = Construir el tanque

# Under it.
building-more = Lea primero las comprobaciones de arriba. Las medidas son para un tanque; los materiales, para todos.

# Heading of the drawings.
build-drawings = Dibujos

# Heading of the figures.
build-checks-heading = Resistencia, flotación y flecha

# Heading of what is made.
build-parts-heading = Marco, lona y agujeros

# Heading of the materials.
build-materials-heading = Qué conseguir

# Link that saves the materials.
save-materials = Guardar la lista como tabla (CSV)

# Name of that file.
materials-file = slackwater-materiales.csv

# Heading of the running.
build-running-heading = Manejo del tanque

# Heading of the work.
build-work = El día de la cosecha, en este orden

# Heading of what must not be missed.
alarm-heading = Alto: lea esto

# Label of the choice of what is printed.
what-to-print = Qué imprimir

# A template of more pages than anybody joins.
template-too-large = Esta placa es demasiado grande para una plantilla de papel. Marque sus agujeros con las medidas de la hoja de construcción.

# Beside the check bar.
template-bar = { $length }. Si no, imprima de nuevo al 100 %.

# How pages meet.
template-join = Corte por el marco. Una donde coincidan las letras y sigan los trazos inclinados. Línea gruesa: borde.

# Columns of the figures.
build-check-heads-1 = Qué

# Columns of the figures.
build-check-heads-2 = En este plan

# Columns of the figures.
build-check-heads-3 = Requerido

# Columns of the materials.
build-material-heads-1 = Qué

# Columns of the materials.
build-material-heads-2 = Cuánto

# Columns of the materials.
build-material-heads-3 = Medidas

# Columns of the materials.
build-material-heads-4 = Precio

# What can be printed.
papers-1 = Ficha de cultivo

# What can be printed.
papers-2 = Fichas pequeñas para una clase

# What can be printed.
papers-3 = Lista para el grupo

# What can be printed.
papers-4 = Registro semanal

# What can be printed.
papers-5 = Hoja de construcción

# What can be printed.
papers-6 = Plantilla para perforar

# Buttons that print what is not the card.
print-other-1 = Imprimir fichas pequeñas

# Buttons that print what is not the card.
print-other-2 = Imprimir lista

# Buttons that print what is not the card.
print-other-3 = Imprimir registro

# Buttons that print what is not the card.
print-other-4 = Imprimir hoja de construcción

# Buttons that print what is not the card.
print-other-5 = Imprimir plantilla

# How many pages the template takes, and how to print it.
template-pages = { $pages ->
    [one] 1 página
   *[other] { $pages } páginas
}, a escala real. Imprima al 100 % («tamaño real», no «ajustar a la página») y mida la barra.

# At the head of a page of the template, in one short line: rows and columns of pages.
template-page = Fila { $row }, columna { $column }

# The same on the template of a tank that must not be built so: with one of the alarms below.
template-page-alarm = Fila { $row }, columna { $column }. { $alarm }

# The tank is heavier than its place bears. At the foot of a phone and the head of each page of the template: short.
alarm-above-rating = No lo construya ahí: pesa demasiado para el lugar.

# The same where the load that the place bears is not given.
alarm-rating-unknown = No lo construya ahí: nadie sabe cuánto soporta el lugar.

# The same on a balcony, a deck or a roof.
alarm-balcony-or-roof = No lo construya ahí: nada de tanques en balcones, terrazas ni techos.

# The same where the sides are high or long.
alarm-ask-competent-person = Antes de llenar, haga revisar los lados por una persona competente.

# Under the drawing of a tank with a fixed cover; the size is length by width.
tank-caption-cover = El tanque desde arriba, con su cubierta de { $size } y sus puntales.

# Under the drawing of a tank with boards; the size is length by width.
tank-caption-boards = El tanque desde arriba: { $boards ->
    [one] 1 placa
   *[other] { $boards } placas
} de { $size } sobre sus tubos.

# The same where a narrow strip of board without holes fills the rest of the tank.
tank-caption-strip = El tanque desde arriba: { $boards ->
    [one] 1 placa
   *[other] { $boards } placas
} de { $size } sobre sus tubos y una tira sin agujeros en el extremo.

# Under the drawing of a board; the size is the diameter of a hole.
board-caption-board = Una placa: { $holes ->
    [one] 1 agujero
   *[other] { $holes } agujeros
} de { $size }.

# The same of a fixed cover.
board-caption-cover = La cubierta: { $holes ->
    [one] 1 agujero
   *[other] { $holes } agujeros
} de { $size }.

# Under the drawing of stock sheets that are cut alike. Offcuts are drawn with dashed lines.
sheet-caption = { $sheets ->
    [one] Una lámina
   *[other] { $sheets } láminas iguales
}: { $pieces ->
    [one] 1 pieza
   *[other] { $pieces } piezas
}{ $sheets ->
    [one] {""}
   *[other] {" "}de cada una
}; { $offcuts ->
    [0] no sobra nada
    [one] sobra 1 recorte, en línea discontinua
   *[other] sobran { $offcuts } recortes, en línea discontinua
}.

## build_figures

# From a low figure to a high one, both with their units.
build-span = { $low } a { $high }

# Column “Wanted” of the figures: the most that is taken.
build-check-up-to = hasta { $most }

# Column “Wanted” of the figures: the least that is taken.
build-check-or-more = { $least } o más

# A line of the figures: two depths follow, each a length or the next message.
build-check-draught = Calado de las placas, al trasplantar y al final

# In place of a depth: boards that sink.
build-check-under-water = bajo la solución

# A line of the figures: sag of boards at rest on the pipes.
build-check-board-sag = Flecha entre tubos al descansar, a largo plazo

# A line of the figures: distance of the pipes.
build-check-pipe-spacing = De tubo a tubo, entre centros

# What is wanted there: the distance at which boards sag least.
build-check-least-sag = flecha mínima con { $spacing }

# A line of the figures: two lengths follow, as “5 cm to 6 cm”.
build-check-gap = Aire húmedo en la cosecha, del extremo más alto del fondo al más bajo

# The next line: the least of that gap.
build-check-clear-gap = Aire húmedo donde es menor, bajo una placa combada

# A line of the figures: whether boards float upright; two heights follow.
build-check-metacentric = Altura metacéntrica, al trasplantar y con plantas crecidas

# What is wanted of these heights.
build-check-above-zero = mayor que cero

# A line of the figures: how far an edge of a board goes down.
build-check-edge-dip = Hundimiento del borde al cosechar una mitad

# A line of the figures: two clearances follow.
build-check-room = Holgura junto a las placas, a lo ancho y a lo largo

# A line of the figures: two masses follow.
build-check-ballast = Lastre por { $units ->
    [us] pie
   *[metric] metro
} de tubo; en total

# What is wanted of the ballast: it outweighs the lift of the pipe, given as a mass.
build-check-lift = contra un empuje de { $lift } por { $units ->
    [us] pie
   *[metric] metro
}

# The same where the pipes stay down by themselves: no ballast is needed.
build-check-no-ballast = no hace falta

# A line of the figures.
build-check-uptake = Agua que absorbe una placa

# A line of the figures.
build-check-cover-load = Carga sobre la cubierta

# A line of the figures.
build-check-cover-sag = Flecha de la cubierta, a largo plazo

# A line of the figures.
build-check-cover-gap = Aire húmedo en la cosecha bajo su punto más bajo

# A line of the figures: the solution pushes the sides out; a force and a moment follow.
build-check-push = Empuje sobre un { $units ->
    [us] pie
   *[metric] metro
} de lado; momento respecto a su base

# A line of the figures: bending stress of the sides.
build-check-bending = Esfuerzo de flexión en los lados, entre refuerzos

# A line of the figures: a length follows.
build-check-bulge = Abombamiento de los lados, a largo plazo

# A line of the figures: two masses follow.
build-check-weight = Peso del tanque lleno; parte de la solución

# A line of the figures: load on the floor, the bench or the ground.
build-check-load = Carga sobre lo que hay debajo

# What is wanted below the tank.
frame-checks-ground = suelo firme

# The same where what the place bears is not given.
build-check-rating-unknown = nadie lo sabe: no construya

# A line of the figures: a mass follows.
build-check-leg = Carga sobre cada pata

# First step of building: short tanks.
build-parts-spirit-level = Nivele primero el lugar, con un nivel de burbuja sobre una regla larga y recta. Compruébelo de nuevo cuando el marco esté en pie.

# The same for long tanks.
build-parts-water-level = Nivele primero el lugar, con un nivel de agua: una manguera transparente llena de agua. Compruébelo de nuevo cuando el marco esté en pie.

# A step of building. Timber: its size, as “38 × 140 mm”.
build-parts-frame = Marco de madera de { $timber }: dos lados de { $long }, dos de { $short } entre ellos, con una altura de { $height }.

# Follows in the same step.
build-parts-posts = Un poste en cada esquina.

# In place of the one before where the sides need braces; braces: two or more.
build-parts-posts-and-braces = Un poste en cada esquina y { $braces } refuerzos a lo largo de los lados, a no más de { $spacing } uno de otro.

# A step of building: felt or the like between frame and liner, by its area.
build-parts-cushion = Ponga un acolchado en el fondo y los lados ({ $area }): ninguna piedra, clavo ni astilla debe tocar la lona.

# A step of building.
build-parts-liner = Lona impermeable: { $layers ->
    [one] una pieza
   *[other] { $layers } piezas
} de { $length } × { $width }, con { $overlap } que pasan sobre el borde y bajan por fuera. Tiéndala floja, pliegue las esquinas sin cortarlas, deje entrar agua hasta más o menos una mano de profundidad y saque todo el aire que quede debajo. Solo entonces fíjela, con unas { $staples } grapas, únicamente en la parte de fuera del borde.

# A step of building. Size: the name of the pipe, as “110 mm”; ends: how its ends are made, a choice of the plan with a capital letter.
build-parts-pipes = Coloque { $count ->
    [one] 1 tubo
   *[other] { $count } tubos
} de { $size } a lo largo del tanque, a { $spacing } de centro a centro. { $ends }.

# A step of building: props hold the cover up. Places: one length or several, with commas.
build-parts-props = Puntales de { $height } de alto bajo la cubierta, en filas a { $places } de uno de los lados, sobre apoyos que no dañen la lona.

# A step of building. Diameter of a hole, all holes of the tank, plants on a square metre or foot; stock sheets of length by width.
build-parts-holes = Agujeros de { $diameter } de diámetro: { $holes } en total, { $density ->
    [one] 1 planta
   *[other] { $density } plantas
} por { $units ->
    [us] pie
   *[metric] metro
} cuadrado. { $sheets ->
    [one] 1 lámina
   *[other] { $sheets } láminas
} de { $size }.

# A step of building: how the tank is emptied later.
build-parts-drain = Para vaciar: una manguera de { $hose } como sifón, con su extremo muy por debajo del fondo, tarda cerca de { $minutes } min. Llévela a donde la solución gastada no haga daño.

# A step of building.
build-parts-children = Los niños pequeños se ahogan en { $units ->
    [us] pocas pulgadas
   *[metric] pocos centímetros
} de agua descubierta: mantenga el tanque cubierto o cercado, también cuando solo contenga agua de lluvia.

# Over that list.
hole-rows-heading = Centros de los agujeros desde una esquina, fila por fila

# A row of holes: how far the row lies from one edge, and where the holes lie along it, with commas.
hole-row = A { $from } del borde: { $places }

## build_lists

# Things to get, in the list of materials, down to the growing medium.
item-name-stock-sheet = Láminas para placas o cubierta

item-name-cover-fabric = Tela para la cubierta

item-name-net-pot = Macetas de rejilla

item-name-pipe = Tubo

item-name-ballast = Piedra o arena limpia como lastre

item-name-pipe-cap = Tapones para los tubos

item-name-side-timber = Madera para los lados

item-name-corner-brace = Postes de esquina

item-name-mid-brace = Refuerzos

item-name-prop = Puntales

item-name-liner = Lona impermeable

item-name-cushion = Acolchado bajo la lona

item-name-staple = Grapas o tachuelas

item-name-medium = Sustrato

# Steps of the day of harvest, in this order, down to the edges.
work-step-pull-boards = Haga flotar las placas y llévelas hacia un extremo.

work-step-cut-heads = Corte las plantas.

work-step-clear-pots = Saque las macetas y las raíces; nada debe quedar en el tanque.

work-step-wash-boards = Lave las placas o la cubierta y deje que se sequen.

work-step-drain = Saque con un sifón lo que no se vuelva a usar y limpie la lona.

work-step-fill-up = Llene hasta la marca.

work-step-add-fertilizer = Añada lo que necesita el próximo cultivo y revuelva.

work-step-measure = Mida la CE y el pH.

work-step-inspect = Busque fugas, aire bajo la lona y larvas de mosquito.

work-step-plant = Coloque las macetas con plántulas.

work-step-float-boards = Ponga de nuevo a flote las placas, o coloque la cubierta.

work-step-close-edges = Cierre toda abertura en los bordes contra la luz y los mosquitos.

# Last line of the list of materials: the sum of those with a price.
build-materials-total = Todo lo que tiene precio

# How the tanks are run: the volume of the first fill.
running-first-fill = El primer llenado requiere { $volume }.

# The same: boards rest on pipes at harvest; so much water lifts them off.
running-refloat = En la cosecha, con { $volume } más, las placas vuelven a flotar y se pueden llevar hacia un extremo.

# The same of several tanks. Apart: days from one tank's planting to the next tank's; cycle: days from one planting of a tank to its next.
running-tanks = { $tanks } tanques por turnos, con { $apart ->
    [one] 1 día
   *[other] { $apart } días
} entre el trasplante de uno y el del siguiente, y cada uno cada { $cycle } días: alrededor de { $heads ->
    [one] 1 planta
   *[other] { $heads } plantas
} por semana.

# The same of one tank.
running-tank = Con un trasplante cada { $cycle } días: a la larga, alrededor de { $heads ->
    [one] 1 planta
   *[other] { $heads } plantas
} por semana.

## built

built-name-sag = Cómo se calcula la flecha

built-name-clear-gap = Cómo se calcula el espacio libre

built-name-trim = Cómo se calcula la estabilidad

built-name-room = Cómo se evalúa la holgura en los bordes

built-name-ballast = Cómo se calcula el lastre

built-name-uptake = Cómo se calcula el agua en la espuma

built-name-cuts = Cómo se calculan agujeros y cortes

built-name-cover = Cómo se calcula la cubierta

built-name-level = Cómo se evalúa el fondo

built-name-sides = Cómo se calculan los lados

built-name-load = Cómo se calcula la carga

built-inputs-sag = { $load } sobre una placa de { $width } de ancho; tubos debajo de ella a { $places } de su borde.

built-inputs-sag-range = La espuma más rígida del tipo tiene una flecha de { $least }; la más blanda, de { $most }.

built-inputs-clear-gap = { $gap } de aire húmedo entre la solución y los tubos al final, menos la flecha de { $sag } y la mitad del desnivel del fondo, que es de { $drop }.

built-inputs-clear-gap-no-sag = { $gap } de aire húmedo entre la solución y los tubos al final, menos la flecha de una placa y la mitad del desnivel del fondo, que es de { $drop }.

built-inputs-trim = Una placa con macetas y plántulas pesa { $weight }; su calado es de { $draught } en el trasplante y de { $draught_at_end } al final; mide { $width } de ancho.

built-inputs-room = Medidas interiores del tanque menos las placas en filas: a lo ancho sobra una holgura de { $across }; a lo largo, de { $along }.

built-inputs-ballast = Un { $units ->
    [us] pie
   *[metric] metro
} del tubo solo pesa { $weight } y, con los extremos según el plan, tiene un empuje hacia arriba de { $lift }; margen: { $margin }.

built-inputs-uptake = Volumen de una placa y el agua que la espuma de su tipo absorbe en una inmersión larga: { $water }.

built-inputs-cuts = Agujeros de { $hole } según la distancia entre plantas y la distancia al borde; láminas comerciales de { $length } × { $width }.

built-inputs-cover = Un vano libre de { $span } bajo { $load }, con un espesor de { $thickness }. El material más rígido de este tipo tiene una flecha de { $least }; el más blando, de { $most }.

frame-inputs-level = Cuánto más bajo que el otro está un extremo del fondo, según su dato.

built-inputs-sides = Con { $depth } de solución, cada { $units ->
    [us] pie
   *[metric] metro
} de lado recibe un empuje de { $force } (momento respecto a su base: { $moment }); los refuerzos dejan libres { $span }; la tabla más baja mide { $thickness } × { $width }.

built-inputs-load = Solución: { $solution }; con placas o cubierta, plantas crecidas y madera: { $total }; sobre la superficie del fondo.

built-equation-sag = La placa como viga sobre sus tubos, con extremos en voladizo, bajo una carga uniforme: momento flector dividido entre la rigidez, sumado dos veces, por la fluencia.

built-equation-clear-gap = Espacio de aire menos la flecha, menos la mitad del desnivel: la solución se mantiene horizontal, mientras que los tubos y las placas siguen la caída del fondo.

built-equation-trim = Altura metacéntrica = centro de empuje + segundo momento del plano de flotación entre el volumen desplazado − centro de masa; lo que baja un borde = la mitad del ancho por el momento de inclinación entre (peso por altura metacéntrica).

built-equation-room = Medida interior menos tantas placas como quepan.

built-equation-ballast = Empuje hacia arriba = agua desplazada menos el tubo, menos lo que lo llena; lastre dentro del tubo = empuje por el margen.

built-equation-uptake = Volumen de la placa por la absorción a largo plazo de su espuma.

built-equation-cuts = Filas según la distancia entre plantas y la distancia al borde, repartidas por igual; láminas con cortes rectos de lado a lado: de todos los patrones de hasta tres bloques, el que da más piezas.

built-equation-cover = Una franja de cubierta a lo ancho del tanque como viga sobre los lados y las filas de puntales, bajo una carga uniforme, por la fluencia; la tela, como un cable colgante.

built-equation-level = El desnivel frente al máximo que deja a las raíces espacio y contacto en ambos extremos.

built-equation-sides = Presión = densidad × gravedad × profundidad; la tabla más baja como viga articulada en los refuerzos; esfuerzo = momento entre módulo de sección; abombamiento por la fluencia.

built-equation-load = Masa entre la superficie del fondo, frente a la carga que el lugar está calculado para soportar.

built-source-sag = Ecuación de los tres momentos (Clapeyron 1857); resistencia según ASTM C578; módulos según las hojas técnicas de los fabricantes. El límite y los factores de fluencia (espuma extruida: { $extruded }; expandida: { $expanded }) son supuestos.

built-source-clear-gap = Geometría. Espacio mínimo: práctica común, sin fuente.

built-source-trim = Arquímedes; Bouguer 1746. Centros de masa de las plantas: supuestos.

built-source-practice = Límites: práctica común, sin fuente.

built-source-ballast = Arquímedes; diámetros y espesores de pared de ISO 161-1, EN ISO 1452, ASTM D1785, D2729 y D3034. El margen de { $margin } es un supuesto.

built-source-uptake = Límites para inmersión larga de EN 13164 (espuma extruida) y EN 13163 (expandida).

built-source-cuts = Geometría; dejar { $foam } de espuma junto a un agujero es práctica común, sin fuente.

built-source-cover = Clapeyron 1857; módulos según EN 636 (madera contrachapada) y las hojas técnicas de los fabricantes; fluencia de la madera contrachapada según EN 1995-1-1; la de los demás materiales es un supuesto, igual que el límite.

built-source-sides = Hidrostática; clase resistente C16 de EN 338, en estado húmedo y a largo plazo según EN 1995-1-1.

built-source-load = Arquímedes y la báscula; la carga admisible del lugar solo la indica quien lo construyó o fabricó.

built-sure-sag = Con un error de hasta un tercio para la espuma comercial: su módulo varía. No se cuenta lo que sostiene la solución, así que el error queda del lado seguro.

built-sure-clear-gap = Tan seguro como la flecha y el consumo de agua.

built-sure-trim = Es una guía: las plantas crecidas se apoyan en sus vecinas, y las placas en las suyas.

built-sure-room = Tan seguro como su cinta métrica; la madera y la lona impermeable se mueven con la humedad.

built-sure-ballast = Con un error de hasta una décima parte.

built-sure-uptake = Es un límite superior; no se cuenta lo que abren las raíces.

built-sure-cuts = Exacto; cada corte de sierra quita de { $low } a { $high }.

built-sure-cover = Con un error de hasta un tercio; la madera contrachapada húmeda tiene más flecha.

built-sure-level = Tan seguro como el nivel que usted use.

built-sure-sides = Con madera sana, el error queda del lado seguro. No se cuentan tornillos ni uniones.

built-sure-load = Con un error de hasta una décima parte. No juzga ningún edificio: eso corresponde a profesionales de ingeniería.

## structure

fact-too-few-pipes = { $pipes ->
        [0] En reposo, una placa no se apoya en ningún tubo y se vuelca. Cada placa necesita dos debajo.
        [one] En reposo, una placa se apoya en un solo tubo y se vuelca. Cada placa necesita dos debajo.
       *[other] En reposo, una placa se apoya en { $pipes } tubos y se vuelca. Cada placa necesita dos debajo.
    }

fact-board-sag = Las placas en reposo tienen una flecha de { $sag } bajo plantas crecidas y trabajan al { $stress } de la resistencia de la espuma; se admite una flecha de hasta { $limit }.

fact-board-sag-mend = Mueva los tubos, añada uno o use placas más gruesas.

fact-clear-gap = Descontando { $sag } de flecha y { $floor } por el desnivel del fondo, el espacio de aire húmedo es de { $gap } donde es menor; debe ser de { $least } o más.

fact-turns-over = Las plantas crecidas vuelcan las placas: quedan demasiado altas para ese ancho. Use placas más anchas o plantas más livianas.

fact-edge-dip = Con plantas en una sola mitad, el borde baja { $dip }; la placa sobresale { $freeboard } de la solución.

fact-edge-dip-mend = El borde se sumerge: coseche alternando las dos mitades o use placas más gruesas.

fact-jam = Las placas tienen { $room } de holgura entre los lados; con al menos { $least } no se atascan.

fact-jam-mend = Una placa atascada queda colgada en el aire o hundida.

fact-no-open-strips = Ninguna franja abierta junto a las placas mide más de { $limit } de ancho.

fact-open-strips = Junto a las placas queda abierta una franja de { $strip }. Con la luz crecen algas y se crían mosquitos: ciérrela con una tira de placa o una solapa de lona impermeable.

fact-boards-without-place = { $boards ->
        [one] 1 de las placas no cabe cuando se colocan en filas. Use menos placas o de otro tamaño.
       *[other] { $boards } de las placas no caben cuando se colocan en filas. Use menos placas o de otro tamaño.
    }

fact-pipes-stay-down = Los tubos se quedan en el fondo por sí solos.

fact-pipes-lift = Cada { $units ->
    [us] pie
   *[metric] metro
} de tubo empuja hacia arriba con { $lift }. Ponga { $ballast } de piedra o arena limpia en cada { $units ->
    [us] pie
   *[metric] metro
} antes de cerrarlo, o deje abiertos los extremos.

fact-extruded-foam = Espuma extruida: sus celdas cerradas casi no absorben agua.

fact-water-uptake = Con las semanas, la espuma expandida (de perlas) absorbe hasta { $uptake } de agua en una placa de { $board }; por eso flota más bajo en cada cultivo y las raíces crecen dentro de ella. La espuma extruida no.

fact-holes-weaken = La espuma que queda junto a un agujero mide solo { $foam }; con menos de { $least } se rompe. Separe los agujeros entre sí o aléjelos del borde.

fact-sheet-too-small = La lámina comercial es demasiado pequeña para cortar de ella una placa o la cubierta.

fact-cover-sag = La cubierta tiene una flecha de { $sag } bajo plantas crecidas; se admite hasta { $limit }.

fact-cover-props = Los puntales se apoyan en el fondo y miden { $height } de alto.

fact-cover-sag-mend = Apuntálela desde abajo.

fact-cover-light = Esta cubierta deja pasar la luz. Ponga encima plástico negro o una segunda capa; si no, crecen algas y los mosquitos encuentran por dónde entrar.

fact-floor-level = El fondo tiene un desnivel de { $drop } en { $length }; se admite hasta { $limit }. { $by ->
        [water] Nivélelo con un nivel de agua (una manguera transparente llena de agua) antes de colocar la lona impermeable.
       *[spirit] Nivélelo con un nivel de burbuja sobre una regla recta antes de colocar la lona impermeable.
    }

fact-sides = Entre refuerzos, los lados se abomban { $bulge } (se admite hasta { $limit }) y trabajan al { $stress } de lo que se admite para madera húmeda de conífera.

fact-sides-mend = Ponga más refuerzos o use madera más gruesa, y pida que una persona competente lo revise.

fact-ask-competent-person = { $depth } de solución es mucha profundidad. A partir de { $limit }, aproximadamente, una persona competente debe revisar los lados y sus uniones antes de que usted llene el tanque.

fact-do-not-build-there = No lo construya ahí. El tanque pesa { $total } y ejerce una carga de { $load } sobre lo que lo sostiene.

fact-balcony-or-roof = Los balcones, las terrazas elevadas y los techos no son para tanques.

fact-above-rating = El lugar está calculado para soportar solo { $rating }.

fact-rating-unknown = Nadie ha dicho cuánto soporta el lugar.

fact-build-elsewhere = Construya sobre suelo firme y nivelado, o pida a profesionales de ingeniería con licencia que calculen cuánto soporta el lugar, y cumpla las normas locales.

## glossary

glossary = Palabras y dibujos

glossary-more = Lo que significan las palabras de esta página. La letra delante de una palabra muestra dónde está en el dibujo.

chapter-container = En el recipiente

chapter-container-drawing = Una cubeta en corte, el día del trasplante y cerca de la cosecha: la solución ha bajado y las raíces cuelgan en el aire sobre ella.

term-rim = Borde

term-rim-meaning = El canto superior del recipiente, por dentro. Las profundidades se miden desde él hacia abajo o desde el fondo hacia arriba.

term-cover = Cubierta

term-cover-meaning = La tapa, lámina o placa que sostiene las plantas y no deja entrar luz ni insectos.

term-net-pot = Maceta de rejilla

term-net-pot-meaning = Una maceta con ranuras. Su reborde descansa en la cubierta y su base está en la solución el día del trasplante, para que el sustrato se mantenga húmedo.

term-fill-mark = Marca de llenado

term-fill-mark-meaning = El nivel hasta el que se llena antes de trasplantar. Ahí está todo lo que el cultivo va a beber; después no se añade nada.

term-nutrient-solution = Solución nutritiva

term-nutrient-solution-meaning = Agua con todo el fertilizante disuelto en ella.

term-charge = Carga

term-charge-meaning = Un llenado del recipiente: toda el agua y todo el fertilizante que recibe un cultivo.

term-moist-air-gap = Espacio de aire húmedo

term-moist-air-gap-meaning = El aire entre la solución que baja y la cubierta. Tiene que abrirse a tiempo y debe mantenerse húmedo.

term-air-roots = Raíces aéreas

term-air-roots-meaning = Raíces cortas y ramificadas que crecen en el espacio de aire húmedo y ahí toman oxígeno. Se ahogan si el nivel vuelve a subir.

term-water-roots = Raíces de agua

term-water-roots-meaning = Raíces que están en la solución. Beben y se alimentan, y tienen que seguir el nivel que baja.

term-never-above = No llenar más

term-never-above-meaning = El nivel más alto al que puede llegar una reposición: por encima están las raíces aéreas.

term-head = Planta

term-head-meaning = Una planta entera, cortada por encima de su maceta. Su peso es el peso fresco.

chapter-boards = Placas que flotan y luego descansan

chapter-boards-drawing = Un tanque en dos cortes: una placa flota en un nivel alto, con su tubo debajo; más tarde el nivel es más bajo y la placa descansa sobre el tubo.

term-floating-board = Placa flotante

term-floating-board-meaning = Una lámina de espuma rígida que lleva macetas y plantas sobre la solución.

term-draught = Calado

term-draught-meaning = Cuánto se hunde en la solución la cara inferior de una placa flotante. Aumenta con las plantas.

term-pipe = Tubo

term-pipe-meaning = Está en el fondo, debajo de las placas. Su diámetro exterior decide dónde llegan a descansar.

term-rest = Descanso

term-rest-meaning = El día en que el nivel que baja deja las placas sobre sus tubos. Desde entonces se abre el espacio de aire húmedo.

term-sag = Flecha

term-sag-meaning = Cuánto se curva con el tiempo, entre sus apoyos, una placa que descansa o una cubierta.

term-clear-gap = Espacio libre

term-clear-gap-meaning = Lo que la flecha deja del espacio de aire húmedo.

chapter-dissolved = Lo que está disuelto

chapter-dissolved-drawing = Una bolsa con tres números y una jarra de agua de origen, junto a dos botellas de solución madre, A y B.

term-grade = Fórmula

term-grade-meaning = Los tres números de una mezcla, N-P2O5-K2O: nitrógeno, fosfato y potasa como porcentaje de su masa.

term-raw-water = Agua de origen

term-raw-water-meaning = Su agua antes de disolver nada en ella.

term-stock-a = Solución madre A

term-stock-a-meaning = Una solución concentrada de nitrato de calcio. Se guarda aparte porque el calcio precipita con el sulfato y el fosfato.

term-stock-b = Solución madre B

term-stock-b-meaning = Una solución concentrada de la mezcla y de sulfato de magnesio.

term-ec = CE

term-ec-meaning = Conductividad eléctrica a 25 °C (77 °F), en milisiemens por centímetro: cuánta sal hay disuelta, no cuál.

term-alkalinity = Alcalinidad

term-alkalinity-meaning = Lo que neutraliza el ácido en el agua, como carbonato de calcio. Una alcalinidad alta hace subir el pH a medida que las plantas beben.

term-chelate = Quelato

term-chelate-meaning = Hierro u otro metal sujeto en un anillo de una molécula más grande, para que siga disuelto.

term-falls-out = Precipita

term-falls-out-meaning = Se dice de una sal que no sigue disuelta y se asienta como sólido: las plantas no la reciben.

chapter-time = Un cultivo en el tiempo

chapter-time-drawing = Una línea de días: la semilla, una plántula en su maceta y una planta crecida con el nivel mucho más bajo.

term-seeding = Siembra

term-seeding-meaning = El día en que se ponen las semillas en el sustrato.

term-transplanting = Trasplante

term-transplanting-meaning = El día en que las plántulas pasan a la solución. La página cuenta los días desde aquí: es el día 0.

term-harvest = Cosecha

term-harvest-meaning = El día en que la planta promedio tiene el peso que usted pide.

term-succession = Siembra escalonada

term-succession-meaning = Siembras una tras otra, para que haya plantas cada semana.

term-factors = Factor de crecimiento, factor de agua

term-factors-meaning = Números que hacen que las plantas del modelo crezcan o beban más o menos que en el publicado. Los enseña un cultivo que usted siguió en un cuaderno.

term-seasons = 100 temporadas así

term-seasons-meaning = El mismo plan vivido muchas veces, con otro tiempo y otras plantas: en cuántas de cada cien sale bien.

chapter-air = Aire y luz

chapter-air-drawing = El sol y una lámpara sobre una hoja que desprende agua al aire.

term-solar-radiation = Radiación solar

term-solar-radiation-meaning = La energía de la luz del sol que llega a un metro cuadrado en un día, en megajulios.

term-photon-flux = Flujo de fotones (PPFD)

term-photon-flux-meaning = Cuántos fotones útiles para las plantas llegan a las hojas, en micromoles por metro cuadrado cada segundo. Las lámparas se venden según este valor.

term-water-given-off = Agua transpirada

term-water-given-off-meaning = La que las hojas pierden en el aire, más con sol, calor y aire seco. Casi toda la solución se va por este camino.

term-relative-humidity = Humedad relativa

term-relative-humidity-meaning = Cuánto vapor de agua tiene el aire, como parte de lo que podría contener a esa temperatura.

term-shelter = Techo o abrigo

term-shelter-meaning = Lo que está entre el cielo y las plantas: quita luz y frena el viento.

## trial

trial-label-replicates = Recipientes de cada variante, o bloques

trial-label-heads-per-unit = Plantas trasplantadas a un recipiente

trial-label-columns = Recipientes lado a lado

trial-label-seed = Número con que se hizo el sorteo

trial-label-difference = Diferencia que le importa, % de la media

trial-label-power = Probabilidad de detectarla, %

trial-label-confidence = Confianza de intervalos y pruebas, %

trial-label-unit-spread = Dispersión entre recipientes, %

trial-label-head-spread = Dispersión entre plantas, %

trial-hint-replicates = De 1 a 50. Repeticiones: cada una independiente.

trial-hint-heads-per-unit = De 1 a 200. Vacío: tantas como tenga el plan.

trial-hint-columns = De 1 a 100. Vacío: una fila por bloque.

trial-hint-seed = Un número entero. El mismo número da los mismos lugares.

trial-hint-difference = De 1 a 200. Vacío: 20.

trial-hint-power = De 50 a 99. Vacío: 80.

trial-hint-confidence = De 50 a { $most }. Vacío: 95.

trial-hint-unit-spread = De { $least } a 100, desviación estándar entre recipientes tratados igual. Vacío: 10, supuesto. Se conoce por un ensayo anterior.

trial-hint-head-spread = De 0 a 100, desviación estándar entre las plantas de un recipiente. Vacío: 15, supuesto.

trials = ¿Qué da mejor resultado aquí? Un ensayo justo

trials-more = Ponga lado a lado variantes del plan abierto, por ejemplo tres tamaños de tubo. Slackwater sortea sus lugares, imprime etiquetas, conserva lo que usted pesa y dice lo que las cifras permiten afirmar. El ensayo conserva el plan tal como estaba cuando se empezó.

new-trial = Empezar un ensayo de este plan

your-trials = Sus ensayos

unnamed-trial = Ensayo sin nombre

trial-name = Nombre de este ensayo

leave-trial = Salir de este ensayo

save-trial = Guardar este ensayo en un archivo

trial-file = slackwater-ensayo.json

delete-trial = Borrar este ensayo

trial-deleted = El ensayo se borró.

compared = Qué se compara

differs = En qué difieren

differs-hint = Una sola cosa: si además difiere otra, nadie puede separar sus efectos.

own-factor = Otra cosa, con mis propias palabras

several = Varias cosas

value-heading = Valor

as-planned = Según el plan

note = Cómo difiere

variant-name = Nombre en las etiquetas

add-variant = Añadir una variante

remove-variant = Quitar la última variante

laid-out = Cómo se distribuye

design = Los lugares se asignan

design-hint = Un bloque es un grupo de lugares parecidos, como un extremo de la mesa o un estante; cada bloque contiene todas las variantes una vez. Use bloques donde la luz o las corrientes de aire cambien a lo largo de la mesa.

unit-is = Una unidad independiente es un recipiente con su propia solución

unit-why = Las plantas de un recipiente comparten su solución, su lugar y su suerte. Pesar más plantas le dice más sobre ese recipiente, pero nada más sobre la variante: son partes de una unidad, nunca repeticiones. Lo mismo vale para las placas que flotan en un mismo tanque, y para la sombra, las lámparas o el calor que comparte toda una mesa o todo un invernadero: en ese caso la unidad es la mesa o el invernadero, y con una sola unidad de cada clase nunca se puede juzgar.

one-of-each = Con un solo recipiente de cada variante no se puede afirmar nada, por muchas plantas que pese: lo que hizo el recipiente no se puede distinguir de lo que hizo la variante. Use dos como mínimo.

draw-again = Sortear de nuevo

fixed = Los registros pertenecen a este croquis, así que no se puede cambiar. Para cambiarlo, quite todos los registros.

given = El croquis vino con el archivo: se sorteó en otra parte.

more-settings = Qué buscar y con cuánta seguridad

bench = La mesa vista desde arriba

expected = Qué se espera de cada variante

expected-more = Según los modelos, para el aire y la luz del plan. Donde no esperan ninguna diferencia, el ensayo puede encontrarla de todos modos: para eso sirve.

how-many = Cuántos recipientes hacen falta

record = Lo que usted pesa y mide

record-more = El peso fresco de cada planta, recipiente por recipiente, y toda la solución que consumió un recipiente desde el trasplante hasta la cosecha: lo que puso al llenar, más lo que añadió, menos lo que queda. Deje la celda vacía donde falte una planta. Cuenta como dato faltante, nunca como cero.

paste = Pegue una tabla o líneas de un archivo CSV

paste-hint-in = Una línea por recipiente: su número y luego { $units ->
    [us] las onzas
   *[metric] los gramos
} de cada planta. O con encabezados en inglés: unit, { $units ->
    [us] water_gal, head_1_oz, head_2_oz
   *[metric] water_l, head_1_g, head_2_g
}; también sirve una línea por planta. NA, un guion o nada significa que falta el dato. Un ensayo sorteado en otra parte trae columnas llamadas unit, treatment y block.

take-in = Incorporar esta tabla

take-in-layout = Incorporarla con su croquis

no-layout = Esta tabla no indica ningún croquis: cada línea necesita su recipiente y su variante, en columnas llamadas unit y treatment. Además puede haber columnas llamadas block, row y column.

table-file = Abrir un archivo CSV

save-records = Guardar los registros como CSV

records-file = slackwater-ensayo.csv

clear-records = Quitar todos los registros

clear-records-sure = Quitarlos para siempre

record-table = Registros

container-heading = Recipiente

missing = falta

sample = En la tabla cabe una docena de plantas de cada recipiente. Sortee cuáles pesar, o pegue todas.

belongs-nowhere = Estas líneas no corresponden a ningún recipiente de este croquis.

remove-stray = Quitar estas líneas

used = Solución consumida

trial-print = Imprimir

designs-1 = Al azar en toda la mesa

designs-2 = Al azar dentro de cada bloque

expected-heads-1 = Variante

expected-heads-2 = Cosecha, días

expected-heads-3 = Planta

expected-heads-4 = Agua por peso

expected-heads-5 = Solución inicial

expected-heads-6 = Profundidad de llenado

expected-heads-7 = Aire húmedo al final

trial-papers-1 = Etiquetas

trial-papers-2 = Croquis y hoja de registro

trial-papers-3 = Informe

trial-prints-1 = Imprimir las etiquetas

trial-prints-2 = Imprimir el croquis y la hoja de registro

trial-prints-3 = Imprimir el informe

named-trial = Ensayo: { $plan }

listed-trial = { $name } (ensayo)

lettered-variant = Variante { $letter }

trial-place = recipiente { $container }: { $letter }, { $name }, fila { $row }, lugar { $place }

container-number = Recipiente { $unit }

trial-block = Bloque { $block }

row-and-place = Fila { $row }, lugar { $place }

expected-not-reached = no se alcanza

containers-needed = { $from ->
        [recorded] Con la dispersión de estos registros
       *[expected] Con la dispersión esperada
    } (entre recipientes { $units }, entre plantas { $heads }) { $containers ->
        [beyond] harían falta más de 200 recipientes de cada variante
       *[other] hacen falta { $containers } recipientes de cada variante
    } para detectar una diferencia del { $difference } con una probabilidad del { $chance }.

trial-sees = Este ensayo, tal como está planteado, tiene una probabilidad del { $power } de detectarla; con una probabilidad del { $chance } detecta una diferencia del { $smallest } o más.

containers-count = Más plantas en un recipiente ayudan poco: lo que cuenta son los recipientes.

numbered-head = Planta { $number }

taken-in = { $lines ->
        [one] Se leyó 1 línea
       *[other] Se leyeron { $lines } líneas
    }: { $heads ->
        [one] 1 peso de planta
       *[other] { $heads } pesos de plantas
    }, { $missing ->
        [one] 1 faltante
       *[other] { $missing } faltantes
    }.

not-taken-in = { $problems ->
        [one] 1 lugar no se pudo leer; queda tal como vino.
       *[other] { $problems } lugares no se pudieron leer; quedan tal como vinieron.
    }

## trial_problems

trial-problem-no-plan = No hay ningún plan del que esto pueda diferir.

table-problem-no-records = no hay ninguna línea que leer.

table-problem-no-figures = no hay ninguna columna de pesos de plantas ni de agua. La primera columna es el recipiente.

table-problem-open-quote = hay comillas sin cerrar.

trial-waits = El croquis aparecerá cuando se corrijan estos datos.

result-waits = El resultado aparecerá cuando se corrijan estos registros.

trial-problem-range = { $got } está fuera de lo permitido: de { $low } a { $high }.

trial-problem-cell-not-a-number = «{ $got }» no es un número. Deje la celda vacía donde falte el dato.

trial-problem-not-a-number = «{ $got }» no es un número.

trial-problem-missing = Complete este dato.

trial-problem-not-a-trial = Esto no es un ensayo: no se puede leer a partir de la línea { $line }.

trial-problem-count = { $got } está fuera de lo permitido: de { $low } a { $high }.

trial-problem-repeated = «{ $got }» aparece dos veces. Cada nombre debe ser distinto.

trial-problem-unknown-unit = Ningún recipiente de este croquis se llama «{ $got }».

trial-problem-unknown-treatment = Ninguna variante se llama «{ $got }».

trial-problem-other-treatment = El registro dice «{ $got }», pero el croquis asignó a este recipiente «{ $laid_out }».

trial-problem-water-twice = La solución consumida aparece dos veces: aquí { $got }, antes { $before }.

trial-problem-unknown-field = Un plan no tiene ningún campo «{ $got }».

table-problem-unknown-column = la columna «{ $got }» no se reconoce y se dejó fuera.

table-problem-too-many-cells = { $cells } celdas, pero la tabla tiene { $columns ->
        [one] 1 columna
       *[other] { $columns } columnas
    }.

table-problem-too-many-lines = solo se leen { $most } líneas.

table-problem-in-line = Línea { $line }: { $what }

table-problem-in-cell = Línea { $line }, columna { $column }: { $what }

## trial_tables

pair-note-one-spread = Diferencias honestas de Tukey: sus intervalos y probabilidades valen para todos los pares a la vez.

pair-note-own-spreads = Diferencias de Games y Howell: cada variante tiene su propia dispersión; los intervalos y las probabilidades valen para todos los pares a la vez.

variance-lines-blocks = Bloques

variance-lines-treatments = Variantes

variance-lines-units = Recipientes tratados igual (error)

variance-lines-heads = Plantas de un recipiente

check-lines-head-mass = Las sumas de cuadrados están en { $unit }. Las variantes se juzgan por recipientes, nunca por plantas.

check-lines-water-per-kg = Las sumas de cuadrados están en { $unit }.

mean-heads-1 = Variante

mean-heads-2 = Media

mean-heads-3 = Está entre

mean-heads-4 = Recipientes

mean-heads-5 = Plantas

mean-heads-6 = Letras

pair-heads-1 = Comparación

pair-heads-2 = Diferencia

pair-heads-3 = Está entre

pair-heads-4 = Probabilidad

variance-heads-1 = Fuente

variance-heads-2 = Grados de libertad

variance-heads-3 = Suma de cuadrados

variance-heads-4 = Cuadrado medio

variance-heads-5 = F

variance-heads-6 = P

mean-note-confidence = Cada intervalo contiene la media verdadera con una confianza del { $confidence }.

mean-note-adjusted = Las medias se ajustan a todos los bloques por igual, porque en algunos faltan recipientes.

pair-less = { $larger } menos { $smaller }

check-lines-normal = Lo que queda sin explicar se dispersa como por azar (Shapiro y Wilk, { $p }): los puntos de abajo quedan cerca de la línea.

check-lines-not-normal = Lo que queda sin explicar no se dispersa como por azar (Shapiro y Wilk, { $p }): busque un recipiente en el que algo salió mal, como el del punto alejado de la línea. Tome el resultado con cautela.

check-lines-normality-unknown = Hay muy pocos recipientes para comprobar cómo se dispersan las cifras.

check-lines-alike = Las variantes tienen una dispersión parecida (Brown y Forsythe, { $p }).

check-lines-not-alike = Las variantes no tienen una dispersión parecida (Brown y Forsythe, { $p }); por eso se usan el análisis de Welch y las diferencias de Games y Howell, que lo tienen en cuenta.

check-lines-not-alike-in-blocks = Las variantes no tienen una dispersión parecida (Brown y Forsythe, { $p }). Dentro de los bloques eso no tiene remedio: tome el resultado con cautela.

check-lines-alike-unknown = Con tan pocos recipientes no se puede ver si las variantes tienen una dispersión parecida.

check-lines-welch = Análisis de Welch, que no exige igual dispersión: F = { $f } con { $between } y { $within } grados de libertad, { $p }.

check-lines-spread = Dispersión entre recipientes { $units }, entre plantas { $heads }: con estos valores puede planear el próximo ensayo.

check-lines-explained = { $by ->
        [blocks] Los bloques y las variantes
       *[variants] Las variantes
    } explican el { $share } de toda la variación entre recipientes; la menor diferencia que este ensayo muestra de manera confiable es de { $smallest }.

## trial_result

measure-head-mass = Peso de la planta

measure-water-per-kg = Agua por peso de plantas

means-of-head-mass = Peso medio de la planta

means-of-water-per-kg = Media del agua por peso de plantas

pairs-of-head-mass = Comparación del peso de la planta

pairs-of-water-per-kg = Comparación del agua por peso

refusal-one-unit-each = No se puede afirmar nada: todas las plantas de una variante compartieron un solo recipiente. Son partes de una unidad, no repeticiones, y lo que hizo el recipiente no se puede distinguir de lo que hizo la variante. Repita el ensayo con dos recipientes de cada variante como mínimo; mejor, con cuatro.

refusal-heads-without-unit = No se puede afirmar nada: se registraron plantas sin el recipiente en que estaban. Las plantas de un mismo recipiente se parecen por motivos propios, así que no pueden contar una por una. Anote el recipiente de cada planta.

refusal-one-treatment = Todavía no se puede comparar nada: menos de dos variantes tienen al menos dos recipientes con un dato.

refusal-nothing-left-for-error = No se puede afirmar nada: los recipientes y los bloques no dejan nada con que juzgar la dispersión. Hacen falta más recipientes de cada variante.

refusal-not-connected = No se puede afirmar nada: faltan tantos recipientes que las variantes no se pueden separar de los bloques.

refusal-no-spread = No se puede afirmar nada: todos los recipientes tratados igual coinciden hasta la última cifra, como ocurre con cifras copiadas.

refusal-beyond-method = No se puede afirmar nada: estas cifras quedan fuera de lo que abarca el método.

dots-note-head-mass = Puntos pequeños: plantas. Anillos: medias de los recipientes. Barra: media de la variante con su intervalo.

dots-note-water-per-kg = Anillos: recipientes. Barra: media de la variante con su intervalo.

said = Qué dicen los registros

nothing-yet = Todavía no hay nada registrado.

variance = Análisis de varianza y comprobaciones

residuals = Lo que el análisis no explica, en orden

residuals-note = Lo que queda sin explicar en cada recipiente, en orden. Cerca de la línea: se dispersa como por azar. Los dos puntos extremos llevan el número de su recipiente.

letters = Las variantes que comparten una letra minúscula no se pueden distinguir entre sí.

between-amounts = { $low } y { $high }

share-tiny = menos de 1 de cada 1000

share-one-in = alrededor de 1 de cada { $count }

share-in-hundred = alrededor de { $count } de cada 100

pair-line = { $measure ->
        [water] { $larger } consumió más agua para el mismo peso que { $smaller }
       *[mass] { $larger } dio plantas más pesadas que { $smaller }
    }: la diferencia es de { $by } ({ $more }); con una confianza del { $sure }, la diferencia verdadera está entre { $low } y { $high }.

naive-in-containers = Una prueba que tomara cada una de las { $heads } plantas en { $containers } recipientes como una repetición afirmaría F = { $f } con { $between } y { $within } grados de libertad, { $p }. Eso sería una mentira: estas plantas no son independientes entre sí.

naive-without-containers = Una prueba que tomara cada una de las { $heads } plantas como una repetición afirmaría F = { $f } con { $between } y { $within } grados de libertad, { $p }. Eso sería una mentira: estas plantas no son independientes entre sí.

how-sure = Qué tan seguro es: si todas las variantes fueran iguales, medias tan separadas como estas aparecerían en { $share } ensayos así.

differs-somewhere = No todas las variantes dan lo mismo, pero no se puede decir cuáles dos difieren: si todas fueran iguales, medias tan separadas aparecerían en { $share } ensayos así.

cannot-be-told = No se puede afirmar ninguna diferencia. Eso no significa que las variantes sean iguales: medias tan separadas aparecen por puro azar en { $share } ensayos así.

trial-finds = Un ensayo de este tamaño y esta dispersión encuentra una diferencia de { $detectable } o más en { $cases } de cada 100 casos y fácilmente pasa por alto las menores; aquí una diferencia tiene una incertidumbre de { $half_width } de más o de menos.

variant-left-out = { $variant } se dejó fuera: { $containers ->
        [one] un solo recipiente con un dato es muy poco.
       *[other] no tiene ningún recipiente con un dato.
    }

dots-of = { $measure }: todos los recipientes y sus medias

## notebook

notebook-planted = { $name }, trasplante del { $day }

notebook-among-plans = { $name } (cuaderno)

reading-day = Día { $day }

reading-level = { $from ->
    [mark] { $level } bajo la marca de llenado
   *[rim] { $level } bajo el borde
}

reading-container = { $when }, recipiente { $container }

reading-added = añadido: { $amount }

cut-heads = { $when }: { $heads ->
        [one] 1 planta
       *[other] { $heads } plantas
    }, { $mass }

reading-date = Día o fecha

reading-date-hint = Días desde el trasplante, o año-mes-día.

reading-which-container = Recipiente

reading-which-container-hint = Su número. Vacío: todos por igual.

reading-level-label = Nivel

reading-level-hint = Hacia abajo, hasta la superficie.

reading-level-from = Este nivel está

reading-ec = CE

reading-ec-hint = A { $reference }, como la muestran los medidores.

reading-temperature = Temperatura de la solución

reading-temperature-hint = Se conserva, pero no entra en el cálculo.

reading-then-added = Añadido después

reading-then-added-hint = A un solo recipiente.

reading-note = Nota

day-before-planting = Eso es { $days ->
        [one] 1 día
       *[other] { $days } días
    } antes del trasplante.

day-too-late = Debe estar entre el día del trasplante y el día { $day } después de él.

reading-outside = { $got } está fuera de lo permitido: de { $low } a { $high }.

level-above-rim = La superficie nunca está por encima del borde.

level-below-floor = El recipiente no es tan profundo.

reading-not-a-number = «{ $got }» no es un número. Escriba un número o deje el campo vacío.

reading-not-a-number-of = «{ $got }» no es un número. Escriba un número en { $unit } o deje el campo vacío.

reading-no-day = «{ $got }» no es un día. Escriba los días desde el trasplante, por ejemplo 12, o una fecha, por ejemplo 2027-03-01.

reading-day-missing = Escriba el día.

reading-missing = Complete este dato o quite la línea.

csv-no-header = No hay nada que leer.

csv-unknown-column = No se conoce la columna «{ $got }». Las columnas conocidas son: { $allowed }.

csv-too-many-cells = { $cells } celdas, pero la tabla tiene { $columns ->
    [one] 1 columna.
   *[other] { $columns } columnas.
}

csv-open-quote = Hay unas comillas sin cerrar.

csv-line = Línea { $line }: { $what }

readings-taken-in = { $added ->
        [one] Se añadió 1 lectura;
       *[other] Se añadieron { $added } lecturas;
    } { $known ->
        [one] 1 ya estaba.
       *[other] { $known } ya estaban.
    }

notebooks = Cultivo en curso

notebooks-more = Una vez trasplantado el cultivo, anote lo que lea: el nivel y, si tiene medidor, la CE. El pronóstico se ajusta a sus lecturas, dice si hace falta reponer y hasta qué nivel, y qué enseñó el cultivo para el siguiente. El cuaderno conserva el plan tal como está el día en que se empieza.

new-notebook = Empezar un cuaderno de este plan

your-notebooks = Sus cuadernos

leave-notebook = Salir de este cuaderno

keep = En papel y en archivos

save-notebook = Guardar este cuaderno en un archivo

notebook-file = slackwater-cuaderno.json

delete-notebook = Borrar este cuaderno

print-notebook = Imprimir este cuaderno

notebook = Cuaderno

notebook-deleted = Se borró el cuaderno.

planted = Día del trasplante

planted-hint = Año-mes-día: el día en que las plántulas pasaron a la solución. Vacío: el día que dice el plan.

readings-heading = Sus lecturas

readings-more = Sostenga una regla contra la pared interior del recipiente y mida hacia abajo hasta la superficie, antes de añadir nada. Deje vacío lo que no haya leído.

add-reading = Añadir una lectura

done = Listo

remove-reading = Quitar esta lectura

undo-last = Deshacer el último cambio

no-reading = Todavía nada.

to-mend = por corregir

cuts = Lo que cosechó

cuts-more = Plantas cosechadas en un mismo día y su peso en conjunto.

add-cut = Añadir plantas cosechadas

remove-cut = Quitar estas plantas

save-readings = Guardar las lecturas como CSV

readings-file = slackwater-lecturas.csv

open-readings = Añadir lecturas de un archivo CSV

no-table = Este archivo es demasiado grande o no se pudo leer.

from-mark = Hacia abajo, hasta la superficie; por encima de la marca, con signo menos.

reading-heads-1 = Día

reading-heads-2 = Nivel

reading-heads-3 = CE

reading-heads-4 = Temperatura

reading-heads-5 = Añadido

reading-heads-6 = Nota

levels-from-1 = bajo el borde

levels-from-2 = bajo la marca de llenado

cut-columns-1 = Día o fecha

cut-columns-2 = Recipiente

cut-columns-3 = Plantas

cut-columns-4 = Peso en conjunto

## notebook_forecast

forecast = Lo que se espera ahora

forecasting = Calculando el pronóstico.

forecast-waits = El pronóstico espera hasta que se corrijan los datos marcados.

left-out = { $lines ->
    [one] 1 línea marcada queda fuera hasta que se corrija.
   *[other] { $lines } líneas marcadas quedan fuera hasta que se corrijan.
}

notebook-plan-wrong = El plan que conserva este cuaderno no se puede calcular:

notebook-beyond = Los modelos no llegan tan lejos: no se puede dar un pronóstico.

next-crop-of = { $name } (cultivo siguiente)

correct-plan = Usar esta corrección en el próximo plan: { $name }

seasons-weighed = { $seasons } temporadas evaluadas hasta ahora.

crop-closed = Este cultivo está cerrado.

crop-closed-with = Este cultivo está cerrado. Consumió { $water } de peso fresco.

pace-endless = { $basis ->
    [plan] Solo según el plan, la solución no se agota.
   *[readings] A este ritmo, la solución no se agota.
}

pace-no-harvest = { $basis ->
    [plan] Solo según el plan, la solución se agota el día { $day }; el peso de planta que usted busca no se alcanza a tiempo.
   *[readings] A este ritmo, la solución se agota el día { $day }; el peso de planta que usted busca no se alcanza a tiempo.
}

pace-after = { $basis ->
        [plan] Solo según el plan,
       *[readings] A este ritmo,
    } la solución se agota el día { $day }, { $days ->
        [one] 1 día
       *[other] { $days } días
    } después de la cosecha.

pace-before = { $basis ->
        [plan] Solo según el plan,
       *[readings] A este ritmo,
    } la solución se agota el día { $day }, { $days ->
        [one] 1 día
       *[other] { $days } días
    } antes de la cosecha.

pace-same-day = { $basis ->
    [plan] Solo según el plan, la solución se agota el día { $day }, el mismo día de la cosecha.
   *[readings] A este ritmo, la solución se agota el día { $day }, el mismo día de la cosecha.
}

lasts-in-seasons = { $basis ->
    [plan] La solución dura hasta la cosecha en { $lasts } de cada 100 temporadas.
   *[readings] La solución dura hasta la cosecha en { $lasts } de cada 100 temporadas que concuerdan con sus lecturas.
}

seasons-that-agree = De { $seasons } temporadas del plan, las que concuerdan con sus lecturas equivalen a { $worth ->
    [one] 1 temporada igualmente probable.
   *[other] { $worth } temporadas igualmente probables.
}

seasons-drawn-anew = Pocas de las { $seasons } temporadas del plan concuerdan con sus lecturas: juntas equivalen a { $worth ->
        [one] 1 temporada igualmente probable.
       *[other] { $worth } temporadas igualmente probables.
    } Por eso se sortearon otras { $seasons } que sí concuerdan.

solution-ends = La solución se agota

days-from-to = del día { $low } al { $high }

low-to-high = { $low } a { $high }

levels = Nivel de la solución, día por día

top-up = Reposición

level-key-plan = Solo según el plan: valor medio y ocho de cada diez temporadas

top-up-waits = Se sabrá cuánto se puede añadir cuando haya leído un nivel.

top-up-add = Añada { $amount }

top-up-raw-water = A cada recipiente, como agua de origen: la solución llega al final con suficiente concentración.

top-up-mixed = A cada recipiente, como solución preparada con el { $percent } % de las dosis del plan para la misma cantidad de agua: CE { $ec }.

top-up-ceiling = El nivel nunca debe subir a menos de { $depth } del borde. Hasta ahí abajo se han formado raíces aéreas, y se ahogan si quedan cubiertas.

top-up-not-enough = Para tener seguridad haría falta añadir { $needed }. Ahora no debe entrar más: deje bajar el nivel, léalo y vuelva a añadir.

add-nothing = No añada nada ahora

no-top-up = Por ahora no hace falta reponer.

close = Cuando termine el cultivo

close-more = Lea un último nivel, pese las plantas y luego cierre el cultivo. Así verá lo que se midió en él y lo que enseñó.

close-crop = Cerrar este cultivo

reopen-crop = Abrirlo de nuevo

not-measured = Para saber el agua por peso de plantas se necesitan el peso de las plantas y un último nivel. No puede faltar ninguno de los dos.

water-measured = Agua por peso de plantas frescas, según lo medido: un recipiente perdió { $water }; { $heads ->
    [one] 1 planta pesó { $mass }.
   *[other] { $heads } plantas pesaron { $mass } en promedio.
}

factor-learnt = { $factor }: { $was } en este plan, { $now } según sus lecturas; con un 95 % de probabilidad, entre { $low } y { $high }.

taught = Lo que enseñó este cultivo

plan-with-it = Empezar el próximo plan con esta corrección

level-key-1 = Sus lecturas

level-key-2 = Tras sus lecturas: valor medio y ocho de cada diez temporadas

level-key-3 = Solo según el plan: ocho de cada diez temporadas

level-key-4 = Marca de llenado

level-key-5 = Cara inferior de la cubierta o de las placas al final: debajo queda el espacio de aire húmedo

level-key-6 = No llenar más: raíces aéreas

forecast-heads-1 = Ocho de cada diez temporadas:

forecast-heads-2 = solo según el plan

forecast-heads-3 = tras sus lecturas

## hints

save-report = Guardar el resultado como CSV

report-file = slackwater-resultado-del-ensayo.csv

finding-spoons = ¿No tiene balanza? Una cucharadita rasa de estas sales contiene entre { $least } y { $most }: con cucharas la dosis, y con ella la CE, puede desviarse un { $error } hacia arriba o hacia abajo. Pésela.

sowing-past = El día de la siembra ya pasó. Si no tiene plántulas de esa edad, elija una fecha posterior, o indique que la fecha es la de la siembra.

words-explained = ¿Qué significan las palabras?

back-to-plan = Volver al plan

sowing-far = Falta más de un mes para la siembra: hoy es { $today }.

example-name-bottle = Mi botella

example-name-bucket = Mi cubeta

example-name-covered-tank = Mi tanque cubierto

example-name-floating-boards = Mi tanque con placas
