### Las palabras de Bolewalk en español.
###
### Mismas claves y mismos argumentos que en.ftl: una prueba lo compara.
### Español llano, sin tú ni usted: infinitivo para lo que hay que hacer (“Medir la altura.”),
### impersonal para lo demás. Frases cortas: se leen con guantes y al sol.
### Los números llevan coma decimal y los días van día-mes-año; de eso se encarga el código.
###
### Glosario (una sola palabra para cada cosa):
###   property, site → propiedad         field book → cuaderno de campo    crew → cuadrilla
###   target → diana                     overhead line → línea aérea       wire → cable
###   owner of a line → titular          permission → permiso              visit → visita
###   tag → etiqueta                     girth → perímetro                 lean → inclinación
###   stem → fuste (al cliente: tronco)  limb → rama                       crown → copa
###   union → unión                      included bark → corteza incluida  hanger → rama colgada
###   walk-round → vuelta al árbol       inspection → inspección           look → revisión
###   finding → hallazgo                 defect → defecto                  grade → grado
###   codebook → libro de códigos        section → sección del fuste       sound wall → pared sana
###   anchor → anclaje                   load test → prueba de carga       route → recorrido
###   climb → trepar, trepa              moving rope → cuerda móvil        stationary → cuerda fija
###   climbing line → cuerda de trabajo  lanyard → cabo de posicionamiento spurs → espuelas
###   sign-off → habilitación            trainee → en formación            gear → equipo
###   second person → segunda persona    aerial rescue → rescate en altura hitch → nudo de fricción
###   verdict → dictamen                 judgment → valoración             stop → impedimento
###   gap → lo que falta comprobar       cap, limit → límite               score → puntuación
###   drop zone → zona de caída          keep-out → distancia de seguridad fell → talar
###   section down → desmontar por tramos rigged → con retención           free drop → caída libre
###   prune → podar                      rule set → reglas                 house value → valor propio
###   topping cut → desmoche             dieback → muerte regresiva        mallet → mazo

## Units and numbers

unit-m = { $number } m
unit-ft = { $value ->
    [one] { $number } pie
   *[other] { $number } pies
}
unit-cm = { $number } cm
unit-in = { $number } pulg
unit-mm = { $number } mm
unit-m2 = { $number } m²
unit-ft2 = { $number } pies²
unit-kg = { $number } kg
unit-lb = { $number } lb
unit-kg-m3 = { $number } kg/m³
unit-lb-ft3 = { $number } lb/pie³
unit-kn = { $number } kN
unit-lbf = { $number } lbf
unit-kn-m = { $number } kN·m
unit-lbf-ft = { $number } lbf·pie
unit-mpa = { $number } MPa
unit-psi = { $number } psi
unit-cm3 = { $number } cm³
unit-in3 = { $number } pulg³
unit-m-s = { $number } m/s
unit-mph = { $number } mph
unit-deg-c = { $number } °C
unit-deg-f = { $number } °F
unit-deg = { $number }°
unit-percent = { $number } %
unit-beaufort = fuerza { $number }
unit-kv = { $number } kV
unit-s = { $number } s
unit-min = { $number } min
unit-days = { $value ->
    [one] { $number } día
   *[other] { $number } días
}
unit-months = { $value ->
    [one] { $number } mes
   *[other] { $number } meses
}
unit-years = { $value ->
    [one] { $number } año
   *[other] { $number } años
}
unit-points = { $value ->
    [one] { $number } punto
   *[other] { $number } puntos
}
unit-plain = { $number }

symbol-m = m
symbol-ft = pies
symbol-cm = cm
symbol-in = pulg
symbol-mm = mm
symbol-m2 = m²
symbol-ft2 = pies²
symbol-kg = kg
symbol-lb = lb
symbol-kg-m3 = kg/m³
symbol-lb-ft3 = lb/pie³
symbol-kn = kN
symbol-lbf = lbf
symbol-kn-m = kN·m
symbol-lbf-ft = lbf·pie
symbol-mpa = MPa
symbol-psi = psi
symbol-cm3 = cm³
symbol-in3 = pulg³
symbol-m-s = m/s
symbol-mph = mph
symbol-deg-c = °C
symbol-deg-f = °F
symbol-deg = °
symbol-percent = %
symbol-beaufort = fuerza
symbol-kv = kV
symbol-s = s
symbol-min = min
symbol-days = días
symbol-months = meses
symbol-years = años
symbol-points = puntos
symbol-plain = { "" }

measure-with-se = { $value } ± { $se }
measure-feet-and-inches = { $feet-value ->
    [one] { $feet } pie { $inches } pulg
   *[other] { $feet } pies { $inches } pulg
}
measure-from-to = { $low } a { $high }
date-day-and-hour = { $day }, { $hour }

side-n = norte
side-ne = noreste
side-e = este
side-se = sureste
side-s = sur
side-sw = suroeste
side-w = oeste
side-nw = noroeste
side-short-n = N
side-short-ne = NE
side-short-e = E
side-short-se = SE
side-short-s = S
side-short-sw = SO
side-short-w = O
side-short-nw = NO

## Verdicts and the climb

verdict-no-stop = hoy no se halló impedimento
verdict-limited = solo dentro de estos límites
verdict-refer = aún no trepar: otra forma, o segunda opinión
verdict-barred = no trepar
verdict-incomplete = sin valorar: falta comprobar

climb-need-needed = el trabajo pide trepar
climb-need-not-needed = no hace falta que nadie trepe
climb-need-undecided = sin decidir todavía si alguien trepa

## Ways of working, work and access

way-of-working-inspect-only = solo inspeccionar
way-of-working-prune = podar
way-of-working-section-free-drop = desmontar por tramos en caída libre
way-of-working-section-rigged = desmontar por tramos con retención
way-of-working-fell-whole = talar entero
way-of-working-fell-shortened = talar después de acortar
way-of-working-platform-or-crane = plataforma o grúa
way-of-working-no-work = ningún trabajo

other-access-ground = desde el suelo
other-access-platform = desde una plataforma
other-access-crane = con grúa
other-access-neighbouring-tree = desde un árbol vecino
other-access-no-other = no se encontró otra forma

operation-deadwood = quitar ramas secas, moribundas y rotas
operation-crown-thinning = aclarar la copa
operation-crown-raising = elevar la copa
operation-crown-reduction = reducir la copa
operation-limb-removal = reducir o quitar una rama
operation-clearance = podar para despejar
operation-structural-pruning = poda de formación
operation-bracing = sujetar una unión débil
operation-hanger-removal = bajar una rama colgada
operation-removal = quitar el árbol
operation-habitat-stem = dejar el fuste en pie para la fauna
operation-inspection = revisar otra vez, o más a fondo
work-done-done = hecho
work-done-part-done = hecho en parte
work-done-not-done = sin hacer
undone-because-weather = el tiempo
undone-because-daylight = se fue la luz
undone-because-wires = demasiado cerca de un cable
undone-because-animals = insectos, un nido o un refugio
undone-because-found-aloft = no era seguro seguir, por lo hallado arriba
undone-because-gear = faltó o falló equipo
undone-because-client = el cliente pidió menos
undone-because-other = otro motivo

priority-immediate = ya
priority-soon = en semanas
priority-season = esta temporada
priority-routine = sin prisa

## The walk-round and the inspection

inspection-level-stop-on-sight = impedimento a simple vista
inspection-level-triage = primera revisión
inspection-level-full-check = revisión completa
inspection-level-same-day = otra vez el mismo día

life-state-alive = vivo
life-state-dying = moribundo
life-state-dead = muerto

walk-part-wires = cables
walk-part-hangers = ramas colgadas
walk-part-insects = insectos
walk-part-roots = raíces
walk-part-base = base
walk-part-stem-north = fuste, cara norte
walk-part-stem-east = fuste, cara este
walk-part-stem-south = fuste, cara sur
walk-part-stem-west = fuste, cara oeste
walk-part-unions = uniones
walk-part-crown = copa

look-seen = visto
look-part-seen = visto en parte
look-not-seen = no visto

tree-part-roots = raíces
tree-part-base = base
tree-part-stem = fuste
tree-part-union = unión
tree-part-limb = rama
tree-part-crown = copa
tree-part-around = alrededor del árbol

mallet-sound-sound = suena sano
mallet-sound-dull = suena sordo
mallet-sound-hollow = suena hueco
mallet-sound-not-sounded = sin golpear

height-method-tangent = dos ángulos y una distancia horizontal
height-method-percent = dos lecturas en tanto por ciento y una distancia horizontal
height-method-sine = dos ángulos y dos distancias inclinadas
height-method-two-positions = desde dos puntos de una misma línea
height-method-stick = vara y triángulos semejantes
height-method-tape = cinta o pértiga a lo largo del árbol
height-method-by-eye = a ojo
height-method-taken-over = de un inventario anterior
distance-by-tape = cinta, a nivel
distance-by-paces = pasos

girth-method-tape = cinta alrededor del fuste
girth-method-diameter = cinta diamétrica o forcípula
girth-method-by-eye = a ojo
girth-method-taken-over = de un inventario anterior

lean-method-by-eye = a ojo
lean-method-two-sides = con plomada, desde dos lados
lean-method-one-side = con plomada, desde un lado
lean-method-taken-over = de un inventario anterior

position-method-phone-fix = posición del teléfono
position-method-averaged-fixes = media de muchas posiciones del teléfono
position-method-survey = receptor topográfico
position-method-map = leída en un mapa
position-method-photo-record = de una foto
position-method-taken-over = de un inventario anterior
position-average = { $at } ± { $accuracy } · { $count ->
    [one] una lectura
   *[other] { $count } lecturas
}
position-on-plan = { $at } ± { $accuracy } · tocado en el plano, valor propio
position-waiting = Sin posición todavía. Salir a un claro y esperar, o escribirla a partir del plano.
fix-no-number = { $count ->
    [one] Una lectura no traía números.
   *[other] { $count } lecturas no traían números.
}
fix-no-place = { $count ->
    [one] Una lectura daba 0, 0, que es lo que da un receptor sin posición.
   *[other] { $count } lecturas daban 0, 0, que es lo que da un receptor sin posición.
}
fix-no-accuracy = { $count ->
    [one] Una lectura no decía cuánto puede errar.
   *[other] { $count } lecturas no decían cuánto pueden errar.
}
fix-too-coarse = { $count ->
    [one] Una lectura era demasiado imprecisa para distinguir un árbol de otro.
   *[other] { $count } lecturas eran demasiado imprecisas para distinguir un árbol de otro.
}
fix-off-the-globe = { $count ->
    [one] Una lectura no era ningún lugar de la Tierra.
   *[other] { $count } lecturas no eran ningún lugar de la Tierra.
}
fix-old = { $count ->
    [one] Una lectura era de antes de empezar.
   *[other] { $count } lecturas eran de antes de empezar.
}
fix-outlier = { $count ->
    [one] Una lectura quedaba demasiado lejos de las demás.
   *[other] { $count } lecturas quedaban demasiado lejos de las demás.
}

shell-method-drill = taladro de resistencia
shell-method-core = barrena de muestreo
shell-method-probe = varilla o cinta en la cavidad
shell-method-section-picture = imagen de la sección

## Defects

defect-kind-soil-movement = suelo levantado, abombado o agrietado
defect-kind-roots-cut = raíces cortadas o suelo excavado
defect-kind-girdling-roots = raíces estranguladoras
defect-kind-decay = pudrición o cavidad
defect-kind-fire-hollow = base ahuecada por el fuego
defect-kind-bracket-unnamed = carpóforo u hongo sin identificar
defect-kind-kretzschmaria = Kretzschmaria (costra carbonosa)
defect-kind-meripilus = Meripilus (políporo gigante)
defect-kind-phaeolus = Phaeolus (políporo de los tintoreros)
defect-kind-heterobasidion = Heterobasidion (pudrición de raíz)
defect-kind-inonotus = Inonotus (yesquero hirsuto)
defect-kind-ganoderma = Ganoderma (yesquero aplanado y afines)
defect-kind-armillaria = Armillaria (hongo de miel)
defect-kind-bracket-other = otro hongo de nombre conocido
defect-kind-stem-crack = grieta en el fuste
defect-kind-union-crack = grieta en una unión, o unión que se abre
defect-kind-included-bark = corteza incluida o fustes codominantes
defect-kind-limb-crack = grieta en una rama
defect-kind-lightning-strip = franja reciente de un rayo
defect-kind-under-tension = arrancado, enganchado, rajado o en tensión
defect-kind-hanger = rama colgada
defect-kind-dead-limb = rama o punta seca
defect-kind-dieback = muerte regresiva
defect-kind-topping-regrowth = rebrote de un antiguo desmoche
defect-kind-wound = herida antigua, corteza perdida
defect-kind-canker = chancro, abultamiento o costilla
defect-kind-climbers = hiedra u otras trepadoras
defect-kind-stinging-insects = abejas, avispas o avispones
defect-kind-nest-or-roost = nido o refugio protegido
defect-kind-touching-wire = toca un cable
defect-kind-other = otra cosa

# Nombres de los códigos iniciales, hasta que una cuadrilla los cambie.
code-soil-movement = { defect-kind-soil-movement }
code-roots-cut = { defect-kind-roots-cut }
code-girdling-roots = { defect-kind-girdling-roots }
code-decay = { defect-kind-decay }
code-fire-hollow = { defect-kind-fire-hollow }
code-bracket-unnamed = { defect-kind-bracket-unnamed }
code-kretzschmaria = { defect-kind-kretzschmaria }
code-meripilus = { defect-kind-meripilus }
code-phaeolus = { defect-kind-phaeolus }
code-heterobasidion = { defect-kind-heterobasidion }
code-inonotus = { defect-kind-inonotus }
code-ganoderma = { defect-kind-ganoderma }
code-armillaria = { defect-kind-armillaria }
code-bracket-other = { defect-kind-bracket-other }
code-stem-crack = { defect-kind-stem-crack }
code-union-crack = { defect-kind-union-crack }
code-included-bark = { defect-kind-included-bark }
code-limb-crack = { defect-kind-limb-crack }
code-lightning-strip = { defect-kind-lightning-strip }
code-under-tension = { defect-kind-under-tension }
code-hanger = { defect-kind-hanger }
code-dead-limb = { defect-kind-dead-limb }
code-dieback = { defect-kind-dieback }
code-topping-regrowth = { defect-kind-topping-regrowth }
code-wound = { defect-kind-wound }
code-canker = { defect-kind-canker }
code-climbers = { defect-kind-climbers }
code-stinging-insects = { defect-kind-stinging-insects }
code-nest-or-roost = { defect-kind-nest-or-roost }
code-touching-wire = { defect-kind-touching-wire }
code-other = { defect-kind-other }

grade-1 = grado 1: leve
grade-2 = grado 2: marcado
grade-3 = grado 3: grave

## Anchors and the climb plan

diameter-read-tape-aloft = con cinta en altura
diameter-read-beside-known-size = junto a algo de tamaño conocido
diameter-read-scaled-photo = en una foto a escala
diameter-read-by-eye = a ojo

union-form-bark-ridge = arruga de la corteza levantada
union-form-included-bark = corteza incluida
union-form-opening = agrietada o abriéndose
union-form-not-seen = no se ve desde aquí

anchor-state-live = madera viva
anchor-state-regrowth = rebrote de un antiguo desmoche
anchor-state-dead = rama seca
anchor-state-dead-stub = tocón seco

load-test-outcome-held = aguantó
load-test-outcome-moved = se movió
load-test-outcome-cracked = crujió o se agrietó
load-test-outcome-sank = cedió

rope-system-moving-rope = cuerda móvil
rope-system-stationary-crown = cuerda fija, anclada en la copa
rope-system-stationary-base = cuerda fija, anclada en la base

margin-anchor = anclaje, carga de trabajo
margin-rescue = anclaje, carga de rescate
margin-slip = anclaje, resbalón
margin-section = fuste en una sección
margin-base = fuste en la base

## People, skills and gear

electrical-level-unqualified = sin cualificación eléctrica
electrical-level-line-clearance = con cualificación para despejar líneas

skill-inspection = inspección del árbol
skill-gear-check = revisión del equipo
skill-electrical-awareness = riesgo eléctrico
skill-first-aid = primeros auxilios
skill-knot = nudos
skill-friction-hitch = nudos de fricción
skill-moving-rope = cuerda móvil
skill-throw-line = línea de lanzar
skill-limb-walk = desplazarse por las ramas
skill-aerial-rescue = rescate en altura
skill-stationary-rope = cuerda fija
skill-chainsaw-aloft = motosierra en altura, con dos amarres
skill-spurs = espuelas, solo en talas
skill-rigging = retención de piezas

knot-use-stopper = tope al final de una cuerda
knot-use-termination = termina una cuerda en un conector
knot-use-joining = une dos cuerdas
knot-use-midline = gaza en medio de la cuerda
knot-use-gripping = muerde una cuerda y desliza
knot-use-anchoring = ata al fuste
knot-use-lifting = ata herramientas para subirlas

gear-kind-climbing-line = cuerda de trabajo
gear-kind-lanyard = cabo de posicionamiento
gear-kind-second-attachment = segundo amarre
gear-kind-harness = arnés
gear-kind-helmet = casco
gear-kind-connector = conector
gear-kind-hitch-cord = cordino de fricción
gear-kind-friction-saver = salvarramas
gear-kind-throw-line = línea y saquito de lanzar
gear-kind-rescue-kit = equipo de rescate
gear-kind-first-aid-kit = botiquín
gear-kind-spurs = espuelas
gear-kind-rigging-line = cuerda de retención
gear-kind-rigging-block = polea de retención
gear-kind-top-handled-saw = motosierra para trabajar en altura

## The site: targets, wires, permissions, weather

target-kind-dwelling = vivienda
target-kind-outbuilding = construcción auxiliar
target-kind-road = calle o carretera
target-kind-path = camino
target-kind-garden = jardín
target-kind-parking = estacionamiento
target-kind-play = zona de juego o de estar
target-kind-fence = valla o muro
target-kind-services = tuberías o servicios
target-kind-animals = animales
target-kind-other = otro

occupancy-rare = rara vez
occupancy-occasional = de vez en cuando
occupancy-frequent = a menudo
occupancy-constant = siempre

ground-form-spot = punto
ground-form-way = línea
ground-form-area = superficie

line-kind-transmission = línea de transporte
line-kind-distribution = línea de distribución
line-kind-service = acometida a un edificio
line-kind-communication = teléfono o cable de datos
line-kind-railway = catenaria de ferrocarril
line-kind-unknown = línea de tipo desconocido

voltage-between-phases = entre fases
voltage-between-phase-and-ground = entre fase y tierra

permission-kind-owner = consentimiento del dueño
permission-kind-protected-tree = árbol protegido
permission-kind-neighbour = vecino
permission-kind-nests = aves que anidan
permission-kind-bats = murciélagos
permission-kind-quarantine = cuarentena
permission-kind-road-closure = corte de una calle o camino

permission-answer-given = concedido
permission-answer-refused = denegado
permission-answer-not-needed = no hace falta
permission-answer-waiting = pedido, aún sin respuesta

phone-signal-good = buena cobertura
phone-signal-patchy = cobertura a ratos
phone-signal-no-signal = sin cobertura

daylight-day = luz de día
daylight-dusk = amanecer o anochecer
daylight-dark = de noche

## Zones

zone-action-empty-rooms = desalojar las habitaciones, o trabajar de otra forma
zone-action-close-off = cerrar el paso
zone-action-move-away = retirar
zone-action-guard = vigilar
zone-action-protect = cubrir o proteger
zone-action-ask-neighbour = hablar con el vecino
zone-action-call-line-owner = llamar al titular de la línea

## Risk for the client

failure-likelihood-improbable = improbable
failure-likelihood-possible = posible
failure-likelihood-probable = probable
failure-likelihood-imminent = inminente
impact-likelihood-very-low = muy baja
impact-likelihood-low = baja
impact-likelihood-medium = media
impact-likelihood-high = alta
consequences-negligible = insignificantes
consequences-minor = menores
consequences-significant = considerables
consequences-severe = graves
combined-likelihood-unlikely = poco probable
combined-likelihood-somewhat-likely = algo probable
combined-likelihood-likely = probable
combined-likelihood-very-likely = muy probable
risk-rating-low = bajo
risk-rating-moderate = moderado
risk-rating-high = alto
risk-rating-extreme = extremo
risk-level-1 = nivel 1: revisión visual limitada
risk-level-2 = nivel 2: evaluación básica
risk-level-3 = nivel 3: evaluación avanzada
risk-not-assessed = sin evaluar

## Cautions, printed always

# Argumentos: $day, $hour, $weather, $level. Donde falte uno se pasa `caution.unknown`.
caution-sheet-ground = Valorado desde el suelo el { $day }, { $hour }, { $weather }. Inspección: { $level }.
caution-sheet-not-seen = No visto: { $parts }.
caution-sheet-all-seen = Todo visto, hasta donde se puede desde el suelo.
caution-sheet-aid = Ayuda propia de la cuadrilla, no permiso para trepar.
caution-sheet-refuse = Quien trepa puede negarse siempre.
caution-sheet-decide = Mandan la normativa local y el arborista cualificado presente.
caution-anchor-scope = Vale para este anclaje, sistema de cuerda y día:
caution-anchor-not = no para resbalones con cuerda floja, retención de piezas ni tirones de otro lado.
caution-anchor-aloft = Seguir comprobando el anclaje arriba.
caution-decay-bending = Solo se calcula la flexión: ni raíces ni pandeo.
caution-decay-shape = La pudrición rara vez es un hueco limpio.
caution-zone-stem = Distancias por el suelo, desde el fuste.
caution-zone-more = Más cuesta abajo, con viento, con puntas secas o árboles enganchados.
caution-wires-people = Distancias a cables: solo para quien tenga la cualificación indicada.
caution-wires-all = Cuerda, herramienta y rama cuentan como la persona.
caution-client-guarantee = Este resumen no es una garantía.
caution-client-holds = Vale para { $time-frame }, o hasta una tormenta, una excavación cerca del árbol o cualquier otro cambio, lo que ocurra antes.
caution-client-risk = Ningún árbol está libre de riesgo.
caution-unknown = sin anotar
caution-house = Valor propio: lo eligió la cuadrilla, no viene de una fuente publicada.
caution-memory = De memoria, sin contrastar con su fuente.
caution-practice = Práctica habitual, sin fuente publicada.

## How sure a source is

rule-label-confirmed = leído en su fuente
rule-label-second-hand = de segunda mano: citado por otra obra
rule-label-memory = de memoria, sin contrastar
rule-label-common-practice = práctica habitual, sin fuente
rule-label-house = valor propio

## Nouns

noun-site = propiedad
noun-target = diana
noun-overhead-line = línea aérea
noun-permission = permiso
noun-visit = visita
noun-weather-hour = anotación del tiempo
noun-tree = árbol
noun-work = trabajo
noun-inspection = inspección
noun-wire-distance = distancia a un cable
noun-part-look = parte de la vuelta al árbol
noun-finding = hallazgo
noun-stem-section = sección del fuste
noun-shell-reading = lectura de la pared
noun-anchor-point = anclaje
noun-climb-plan = plan de trepa
noun-photo = foto
noun-risk-entry = evaluación de riesgo
noun-near-miss = casi accidente
noun-person = persona
noun-sign-off = habilitación
noun-logged-climb = trepa anotada
noun-gear = pieza de equipo
noun-defect-code = código del libro
noun-house-value = valor propio
noun-signed-judgement = valoración firmada
noun-file = archivo
noun-folder = carpeta
noun-page = página
noun-field-book = cuaderno de campo
noun-rule-set = conjunto de reglas
noun-species = especie

## Errors: what happened, and what to do

error-refused = { $count ->
    [one] Hay algo que no encaja y no se ha cambiado nada. Corregirlo y volver a intentarlo.
   *[other] Hay { $count } datos que no encajan y no se ha cambiado nada. Corregirlos y volver a intentarlo.
}
error-pack-refused = No se ha incorporado nada; aquí todo está como estaba.
error-not-found = No se encuentra: { $kind } “{ $id }”. Revisar el nombre, o volver atrás y elegir en la lista.
error-newer = { $place }: lo escribió una versión más nueva (formato { $found }; esta versión lee hasta el { $known }). Se ha dejado como estaba. Actualizar esta aplicación o programa y abrirlo de nuevo.
error-damaged = { $place } está dañado: { $detail }. { $what-we-did }
error-damaged-moved-aside = No se ha borrado nada. Los archivos dañados se guardan con el cuaderno de campo, en “{ $kept }”. Seguir con la última copia buena, y dar esa carpeta a alguien que pueda repararla.
error-damaged-left-in-place = No se ha borrado ni movido nada. Copiar la carpeta antes de hacer cualquier otra cosa, y luego recuperar la última copia buena.
error-disk-full = No queda sitio para escribir { $place }. No ha quedado nada a medio escribir. Liberar espacio y volver a intentarlo.
error-place-quoted = “{ $name }”
error-place-field-book = el cuaderno de campo
error-unwritable = No se puede escribir { $place }: { $cause }. Comprobar que la carpeta existe y que se puede escribir en ella, o elegir otra.
error-unreadable = No se puede leer { $place }: { $cause }. Comprobar que el archivo está ahí y que se puede leer, y volver a intentarlo.
error-busy = Otro programa está usando { $place }. Cerrarlo, o esperar un momento, y volver a intentarlo.
error-stopped = Detenido, como se pidió. No ha quedado nada a medias.
error-defect = Algo ha fallado en el propio programa: { $detail }. Los datos están como se guardaron por última vez. Volver a intentarlo; si se repite, pasar esta frase a quien cuida de la aplicación.

## Faults: what does not fit

fault-at-place = { $place }: { $sentence }
fault-found = Se encontró: { $found }.
fault-allowed = Se admite: { $allowed }.

fault-not-a-number = Esto no se puede leer como número.
fault-unit-does-not-fit = Esta unidad no encaja aquí.
fault-out-of-range = Este valor está fuera de lo que cabe aquí.
fault-comes-out-of-range = Juntas, estas lecturas dan un valor imposible. Tomarlas de nuevo.
fault-too-small = Este valor es demasiado pequeño: { $found }. Lo mínimo es { $allowed }.
fault-too-large = Este valor es demasiado grande: { $found }. Lo máximo es { $allowed }.
fault-too-short = Este texto es demasiado corto. Hacen falta al menos { $allowed } caracteres.
fault-too-long = Este texto es demasiado largo. Puede tener { $allowed } caracteres.
fault-too-few = Muy pocos datos: { $found }. Hacen falta al menos { $allowed }.
fault-too-many = Demasiados datos: { $found }. Puede haber { $allowed }.
fault-not-a-choice = Esto no es ninguna de las opciones.
fault-not-a-day = Esto no es un día del calendario: { $found }. Se escribe como { $allowed }.
fault-leads-nowhere = Esto remite a un registro que no existe.
fault-id-twice = Este identificador se usa más de una vez. Cada registro necesita el suyo.
fault-tag-twice = Dos árboles tienen esta etiqueta. Dar a cada árbol la suya.
fault-wrong-type = Este valor no es de la clase que toca.
fault-unknown-field = Este campo no se conoce. Revisar cómo está escrito, o quitarlo.
fault-missing-field = Falta el campo “{ $allowed }”. Añadirlo.
fault-does-not-fit = Esto no encaja en la forma del archivo.
fault-not-json = Esto no es JSON válido. Corregir primero este punto; los demás fallos solo se ven después.
fault-not-geojson = Esto no es un archivo GeoJSON. Guardar las formas como GeoJSON e intentarlo de nuevo.
fault-file-at-zero = Esta forma tiene una esquina en 0, 0, lo que escriben los programas cuando no tienen posición. Corregirlo en el programa que hizo el archivo.
fault-no-shapes = En este archivo no hay ningún polígono, línea ni punto.
fault-not-utf8 = Esto no es texto en UTF-8. Guardar el archivo como UTF-8 y volver a intentarlo.
fault-file-too-large = Este archivo es demasiado grande para leerlo.
fault-ring-crosses-itself = Este contorno se cruza consigo mismo. Anotar sus esquinas en orden a lo largo del borde.
fault-coordinates-swapped = Parece que la latitud y la longitud están cambiadas.
fault-photo-missing = Este archivo de foto no está. Ponerlo junto al archivo de la propiedad, o quitar la anotación.
fault-photo-not-a-picture = Este archivo no es una imagen que se pueda leer. Usar JPEG o PNG.
fault-photo-broken = Esta imagen está rota y no se ha guardado. Hacerla de nuevo, o copiarla otra vez de la cámara.
fault-photo-torn = Esta imagen acaba antes de tiempo. La copia quedó cortada: copiarla otra vez de la cámara.
fault-photo-unknown-kind = Esto no es una imagen JPEG ni PNG. Guardarla como JPEG y volver a intentarlo.
fault-photo-too-large = Este archivo de imagen es demasiado grande. Guardar una copia más pequeña y volver a intentarlo.
fault-photo-too-many-pixels = Esta imagen tiene demasiados píxeles. Guardar una copia más pequeña y volver a intentarlo.
fault-syntax = Este archivo no se puede leer en esta línea. Corregir primero ahí; los demás fallos solo se ven después.
fault-missing = Aquí falta algo que hace falta.
fault-doubled = Esta fila está dos veces. Dejar una.
fault-bands = Estos tramos dejan un hueco, se solapan o menguan según avanzan.
fault-unknown-rule = No hay tal fila en las reglas. Revisar cómo está escrita.
fault-rule-fixed = Esta fila no se puede cambiar: es un mínimo publicado, no lo elige la cuadrilla.
fault-newer-format = Esto está escrito en un formato más nuevo. Actualizar esta versión para leerlo.
fault-form = Este valor no encaja en su campo. No se ha cambiado nada.
fault-record = Este registro no está completo. No se ha cambiado nada.
fault-id-taken = Este identificador ya está en uso. No se ha cambiado nada.
fault-needed = Esto hace falta. Anotarlo.
fault-not-whole = Tiene que ser un número entero.
fault-no-position = Esto no es una posición en la Tierra. Esperar a tener señal y tomarla de nuevo.
fault-no-fix-yet = Todavía no hay posición. Salir a un claro y esperar, o escribirla a partir del plano.
fault-fix-at-zero = El teléfono dio 0, 0: aún no tiene posición. Salir a un claro y esperar, tocarla en el plano o escribirla a partir de él.
fault-fix-too-coarse = Esta lectura es demasiado imprecisa para distinguir un árbol de otro. Salir a un claro y esperar, o escribir la posición a partir del plano.
fault-not-a-place = Esto no se puede leer como latitud y longitud. Escribirlo así: { $allowed }.
fault-no-reading = El sensor no dio ningún valor. Mantener quieto el teléfono y tomarlo de nuevo, o escribir el valor.
fault-thunder-both = O se oyeron truenos o no se oyó ninguno: una de las dos cosas.
fault-no-weather-yet = Hoy no se ha anotado el tiempo todavía. Anotarlo primero.
fault-grade-without-sentence = Este código no tiene frase para este grado, así que no se le puede dar. Escribir antes la frase en el libro de códigos.
fault-wall-beyond-middle = Esta pared pasaría del centro del fuste. Medir otra vez la pared o el fuste.
fault-signs-off-self = Nadie se habilita a sí mismo. Nombrar a la persona que lo confirmó.
fault-climbs-with-self = Nadie trepa a solas. Nombrar a quien estuvo al alcance.
fault-name-twice = Otro código tiene este nombre. No se distinguirían dos botones con el mismo nombre.
fault-rules-cross = Los dos valores que van juntos se tocarían o se cruzarían. Cambiar antes el otro.
fault-off-the-plan = Esto queda fuera del plano. Tocar dentro de él.
fault-plan-too-small = A este tamaño un dedo cubre demasiado terreno: { $found }, como mucho { $allowed }. Ampliar el plano y tocar de nuevo.
fault-nothing-to-draw = Todavía no hay nada que dibujar. Tomar una posición para el plano, una altura para la vista lateral, un perímetro para la sección.
fault-nothing-to-undo = Aquí no hay nada que deshacer.
fault-nothing-to-redo = Aquí no hay nada que rehacer.
fault-nobody-signs = No consta quién lleva este teléfono. Decirlo primero.
fault-nothing-to-sign = Nadie ha revisado todavía este árbol, así que no hay nada que firmar.
fault-signed-already = Esta valoración está firmada tal como está. Se puede firmar de nuevo cuando cambie.
fault-top-below-base = La punta sale por debajo de la base. Comprobar que las dos lecturas se tomaron desde el mismo punto y no están cambiadas.
fault-not-a-mapping = Esto no dice qué columna contiene qué. Se escribe como height_m=HEIGHT:ft.
fault-no-such-column = El archivo no tiene la columna “{ $found }”. Tiene: { $allowed }.
fault-mapped-twice = Este campo está asignado dos veces. Elegir una sola columna.
fault-no-known-column = No se reconoció ninguna columna entre: { $found }. Indicarlas con --map, por ejemplo --map height_m=HEIGHT:ft.
fault-no-rows = En este archivo no hay nada que leer.
fault-row-length = Esta fila tiene { $found } celdas y el encabezado { $allowed }. Sus valores pueden estar en la columna equivocada. Corregir la fila.
fault-quote-not-closed = Aquí se abren unas comillas que no se cierran. Cerrarlas, o quitarlas.
fault-half-a-position = Solo está la mitad de la posición. Añadir { $allowed }.
fault-no-place = La posición es 0, 0, que muchos programas escriben donde no hay ninguna.
fault-not-degrees = Esta posición no está en grados de latitud y longitud: { $found }. Se admite { $allowed }. Convertir el archivo a WGS 84.
fault-not-a-point = Un árbol está en un punto; esto es otra figura, o no tiene coordenadas.
fault-other-reference-system = Las coordenadas están en otro sistema de referencia: { $found }. Convertir el archivo a WGS 84 ({ $allowed }).
fault-site-name = La propiedad necesita un nombre de { $allowed } caracteres.
fault-change = Una línea del registro no encaja y no se ha tomado.
fault-change-differs = Este teléfono conoce la anotación “{ $found }” con otro contenido. El paquete se modificó o se dañó; que el otro teléfono lo escriba de nuevo.
fault-change-too-far-ahead = Con fecha { $found }, más de diez años por delante de este teléfono. Poner bien la fecha de este teléfono e incorporar el paquete otra vez; si aquí está bien, está mal en el otro.
fault-record-elsewhere = “{ $found }” es de otra propiedad en este teléfono, y las dos se mezclarían.
fault-pack-altered = Esto no es lo que el paquete dice contener: se modificó, o se dañó por el camino. Que el otro teléfono lo escriba de nuevo.
fault-pack-head = La cabecera del paquete no encaja. Que el otro teléfono escriba el paquete de nuevo.
fault-pack-missing = El paquete anuncia este archivo y no lo contiene. Que el otro teléfono lo escriba de nuevo.
fault-pack-none = Este archivo no es un paquete. Elegir el archivo que otro teléfono escribió como paquete.
fault-pack-other-site = Esta anotación es de una propiedad que el paquete no nombra. Que el otro teléfono lo escriba de nuevo.
fault-pack-path = Este nombre lleva fuera del paquete. Quien hizo este archivo tiene mala intención, o no es un paquete: no incorporarlo.
fault-pack-swells = Esto ocupa, desempaquetado, más de lo que cabe en un paquete. No es un paquete de un cuaderno de campo: no incorporarlo.
fault-pack-too-large = Este archivo es mayor de lo que puede ser un paquete, y no se ha leído.
fault-pack-torn = El paquete se cortó o se dañó por el camino. Enviarlo otra vez.
fault-pack-unlisted = Este archivo está en el paquete y no en su lista. Que el otro teléfono lo escriba de nuevo.

read-number-example = un número con su unidad o sin ella, como { $example }
read-feet-example = un número con su unidad o sin ella, como { $example } o 5 pies 11
read-bearing-example = un lado como NO, o grados como { $example }

## Photos: what their own record leaves open

photo-gap-no-record = La foto no dice dónde ni cuándo se hizo.
photo-gap-record-damaged = Los datos de la foto están dañados. Se usa lo que se pudo leer.
photo-gap-no-position = La foto no dice dónde se hizo.
photo-gap-position-broken = La posición de la foto no es un lugar de la Tierra. Se deja fuera.
photo-gap-position-without-hemisphere = La posición de la foto no dice si es norte o sur, este u oeste. Se deja fuera.
photo-gap-position-void = La cámara no tenía posición cuando se hizo la foto.
photo-gap-no-time = La foto no dice cuándo se hizo.
photo-gap-time-broken = La fecha de la foto no es un día y una hora del calendario. Se deja fuera.
photo-gap-time-without-offset = La hora de la foto es local y no se conoce su huso horario.
photo-gap-direction-without-north = La dirección de la foto no dice si parte del norte verdadero o del magnético. Se deja fuera.
photo-gap-direction-broken = La dirección de la foto no es un rumbo. Se deja fuera.
photo-gap-orientation-broken = La foto no dice qué lado va arriba. Se muestra como está guardada.

## Why a number is asked

position-lat_deg-why = Sin posición, el plano no puede mostrar el árbol ni lo que tiene cerca.
position-lon_deg-why = Sin posición, el plano no puede mostrar el árbol ni lo que tiene cerca.
position-accuracy_m-why = Las zonas del plano crecen con el error de la posición.
anchor-diameter_cm-why = La resistencia de un anclaje va con el cubo de su diámetro.
anchor-from_union_cm-why = Cuanto más lejos de la unión queda la cuerda, más flexiona la rama.
anchor-limb_angle_deg-why = El mismo tirón flexiona más una rama tendida que una empinada.
anchor-limb_length_m-why = Una rama larga ya carga con su propio peso.
load_test-mass_kg-why = Una prueba solo dice algo hasta la carga que de verdad colgó de la cuerda.
person-mass_with_gear_kg-why = El anclaje carga con la persona y todo su equipo.
person-height_limit_m-why = Quien está en formación trepa solo hasta la altura acordada.
person-throw_m-why = Un anclaje cuenta solo si alguien puede pasar una línea por él.
logged_climb-height_m-why = En formación se va de bajo a alto.
settings-text_size_pct-why = Además del tamaño que tenga puesto el teléfono.
gear-rating_kn-why = Cada eslabón entre la persona y el árbol tiene que soportar su carga nominal.
gear-diameter_mm-why = Cuerda, cordino y aparatos tienen que casar entre sí.
gear-length_m-why = La cuerda tiene que llegar del anclaje al suelo.
sign_off-seconds-why = Se anota para ver el progreso. Nunca es obligatorio.
finding-height_m-why = Un defecto en el recorrido o bajo el anclaje pesa más que en otro sitio.
finding-aspect_ratio-why = La unión de dos fustes casi iguales es más débil.
inspection-dieback_pct-why = Una copa con muerte regresiva tiene madera quebradiza y raíces débiles.
wire-distance_m-why = Una distancia medida en el lugar sustituye a la leída en el plano.
height-height_m-why = De la altura salen la zona de caída y la distancia de seguridad.
measure-se_m-why = Cuánto puede fallar la lectura decide cuán segura es la respuesta.
girth-girth_cm-why = La resistencia del fuste sale de su perímetro.
measure-se_cm-why = Cuánto puede fallar la lectura decide cuán segura es la respuesta.
girth-at_height_m-why = El perímetro cambia a lo largo del fuste; por eso cuenta la altura de la cinta.
lean-lean_deg-why = Un fuste inclinado es más largo que la altura del árbol, y ya flexiona por su propio peso.
measure-se_deg-why = Cuánto puede fallar la lectura decide cuán segura es la respuesta.
measure-bearing_deg-why = El lado decide qué hay debajo.
crown-radius_m-why = Las piezas caen dentro del alcance de la copa, y los cables se miden desde su borde.
crown-base_m-why = Por debajo de las ramas vivas más bajas no hay anclaje.
bark-bark_cm-why = La corteza no soporta carga. Se resta del diámetro.
slope-slope_pct-why = La madera resbala y rueda cuesta abajo; la zona crece hacia ese lado.
risk-time_frame_months-why = Una evaluación vale solo para el tiempo para el que se hizo.
line-voltage_kv-why = La distancia de aproximación sale de la tensión. Si nadie la sabe, nadie trepa cerca.
line-height_m-why = Ayuda al titular de la línea y a la cuadrilla a dar con el cable.
section-height-why = La resistencia que queda se calcula a esta altura. Medir donde el fuste suena peor.
limb-height-why = Hasta esta altura hay que llegar; de ella salen el recorrido y la cuerda.
section-diameter_cm-why = La pared sana cuenta en relación con el tamaño del fuste.
section-shell_cm-why = La pared sana es lo que sostiene el fuste.
section-drill_angle_deg-why = Un paso oblicuo por la pared es más largo que su grosor.
section-opening_cm-why = Un fuste abierto es más débil que uno cerrado con la misma pared.
work-piece_length_m-why = La distancia de seguridad crece con la pieza más larga.
work-piece_mass_kg-why = La retención y el personal de tierra tienen que estar preparados para la pieza más pesada.
work-cut_height_m-why = Una pieza cortada más arriba vuela más lejos.
weather-hour-why = El tiempo cambia a lo largo del día. Cada anotación es de una hora.
weather-wind_ms-why = El viento mueve el anclaje y se lleva las piezas.
weather-wind_force-why = El viento mueve el anclaje y se lleva las piezas.
# Señales en tierra de la escala de Beaufort, según las publica el US National Weather Service.
weather-wind_force-how = 0 el humo sube derecho · 1 el humo se inclina · 2 las hojas susurran · 3 hojas y ramillas no paran quietas · 4 se mueven las ramas pequeñas · 5 los árboles pequeños empiezan a balancearse · 6 se mueven las ramas grandes · 7 se mueven los árboles enteros · 8 se rompen ramillas · 9 y más: daños
weather-temperature_c-why = El calor y la helada agotan, y la helada vuelve quebradiza la madera.
weather-humidity_pct-why = El calor húmedo desgasta más que el seco.
weather-thunder_min_ago-why = Nadie está en un árbol hasta que el trueno lleva callado lo suficiente.

## Judge: stops, gaps, caps, limits, rules

zone-fell = { $lengths } × lo mayor entre longitud del fuste y alcance de la copa, { $length-up }
zone-removal = alcance de la copa { $crown-up } y la distancia publicada más allá
zone-pieces = dos veces la pieza más larga alrededor de la copa (alcance { $crown-up }, pieza { $piece-up })
zone-flight = lo que vuela una pieza de { $piece-up } desde un corte a { $cut-up }
zone-swing = alcance de la copa { $crown-up }, péndulo de una pieza de { $piece-up }, y la distancia publicada más allá
zone-prune-barrier = alcance de la copa { $crown-up } y la barrera publicada más allá de la línea de goteo
zone-beyond-drop = alcance de la copa { $crown-up }, una pieza de { $piece-up }, y la distancia publicada más allá de la zona de caída
gap-zone-needs-height-and-lean = Falta la altura, la inclinación o el radio de la copa: no se puede dar zona para la tala. Medirlos.
gap-zone-needs-crown = Falta el radio de la copa: contarlo a pasos hasta la punta más lejana.
gap-zone-needs-piece = Falta la pieza más larga: no se puede dar zona para el trabajo en la copa. Decir cuánto miden las piezas.
gap-zone-of-planned-way = No se puede dar zona para la forma de trabajo prevista ({ $way }) mientras falten datos.
gap-zone-needs-position = El árbol no tiene posición: la zona no se puede dibujar en el plano. Contarla a pasos desde el fuste.
gap-zone-position-accuracy = No se conoce la precisión de la posición: la zona del plano se dibuja sin ella. Contarla a pasos desde el fuste.

# Stops: what bars climbing, who may lift it, and how.

stop-wire-inside-approach = { $line }: a { $distance-down }, y aquí nadie puede acercarse a menos de { $approach-up }. Solo el titular de la línea puede levantarlo: desconectándola ese día, o con personas cualificadas para despejar líneas.
stop-wire-voltage-unknown = { $line }: a { $distance-down }, tensión desconocida. Preguntar al titular de la línea; hasta que responda no trepa nadie.
stop-wire-touching = El árbol toca { $line }. Que nadie toque el árbol ni la valla. Llamar al titular de la línea; solo él puede levantarlo.
stop-wire-touching-unnamed = El árbol toca un cable. Que nadie toque el árbol ni la valla. Llamar al titular de la línea; solo él puede levantarlo.
stop-dead-date-unknown = Muerto, y nadie sabe desde cuándo. Otra forma de trabajo: plataforma, grúa, tala. Quien sepa cuándo murió puede anotar el día.
stop-dead-brittle-kind = Muerto, y esta especie se vuelve quebradiza enseguida. Nadie puede levantarlo: plataforma, grúa o tala.
stop-ash-beetle = Un fresno muerto por el escarabajo rompe sin avisar. Nadie puede levantarlo: plataforma, grúa o tala.
stop-ash-dieback = Un fresno que ha perdido más del { $lost-down } de la copa rompe sin avisar. Nadie puede levantarlo: plataforma, grúa o tala.
stop-route-dead = Hay una parte muerta en el recorrido. Elegir otro recorrido u otro anclaje, o quitarla desde una plataforma.
stop-soil-movement = El suelo está levantado o agrietado junto a las raíces: el árbol puede estar cayendo. No acercarse. Solo puede levantarlo un arborista que haya examinado las raíces, con una nueva revisión completa.
stop-roots-cut = Hay raíces cortadas. Puede darlo por bueno, con su nombre, un arborista que haya examinado las raíces.
stop-lean-new = La inclinación es posterior a la última revisión: el árbol puede estar cayendo. No acercarse. Solo puede levantarlo un arborista que haya examinado las raíces, con una nueva revisión completa.
stop-ground-dug = Se excavó el suelo o se cortaron raíces a { $distance-down } del fuste, dentro de { $radius-up }. Puede darlo por bueno, con su nombre, un arborista que haya examinado las raíces.
stop-ground-dug-unmeasured = Se excavó el suelo o se cortaron raíces cerca del fuste, y nadie tomó la distancia y el perímetro. Medir ambos, o que un arborista examine las raíces y lo dé por bueno, con su nombre.
stop-union-crack = Una unión que sostiene la trepa está agrietada o se abre. Elegir un anclaje y un recorrido que no cuelguen de ella.
stop-stem-crack = El fuste está agrietado de lado a lado. Nadie puede levantarlo: plataforma, grúa o tala.
stop-lightning-strip = Franja reciente de un rayo: nadie sabe qué está rajado por dentro. Otra forma de trabajo; revisar de nuevo pasada una temporada.
stop-under-tension = Arrancado, enganchado, rajado o en tensión. Nadie trepa a él. Bajarlo desde el suelo o con grúa, con personas que entiendan de tensiones.
stop-fire-hollow = La base está ahuecada por el fuego. Nadie puede levantarlo: plataforma, grúa o tala.
stop-kretzschmaria = Kretzschmaria en el árbol: la madera rompe como la loza. Nadie puede levantarlo: plataforma, grúa o tala.
stop-meripilus = Meripilus en el árbol: las raíces pueden estar podridas por debajo. Nadie puede levantarlo: plataforma, grúa o tala.
stop-phaeolus = Phaeolus en el árbol: la base y las raíces pueden estar podridas. Nadie puede levantarlo: plataforma, grúa o tala.
stop-heterobasidion = Heterobasidion en el árbol: la base y las raíces pueden estar podridas. Nadie puede levantarlo: plataforma, grúa o tala.
stop-inonotus-ash = Inonotus en fresno: rompe a la altura del hongo. Nadie puede levantarlo: plataforma, grúa o tala.
stop-ganoderma-hollow = Ganoderma, y el mazo suena hueco. Nadie puede levantarlo: plataforma, grúa o tala.
stop-armillaria-dieback = Armillaria, y la copa está en regresión: las raíces pueden estar podridas. Nadie puede levantarlo: plataforma, grúa o tala.
stop-crew-code = { $name }: la cuadrilla ha fijado que a partir de este grado no trepa nadie.
stop-strength-loss = La pudrición ha quitado el { $loss-down } de la resistencia a { $height }. Nadie puede levantarlo: plataforma, grúa o tala.
stop-hanger-over-route = Una rama colgada sobre el recorrido. Bajarla desde fuera del árbol y revisar de nuevo.
stop-hanger-over-people = Una rama colgada sobre un lugar donde hay gente. Cerrar el lugar, bajar la rama desde fuera del árbol y revisar de nuevo.
stop-stinging-insects = Abejas, avispas o avispones. Esperar a otro día o al final de la temporada, o que los traslade quien pueda hacerlo.
stop-nest-or-roost = Un nido o refugio protegido. Esperar a que quede vacío, o preguntar a la autoridad.
stop-thunder = Trueno hace { $ago }. Fuera de los árboles hasta que pasen 30 minutos sin ninguno.
stop-ice = Hielo o nieve en la corteza o en el suelo. Esperar a que desaparezca.
stop-wind = Viento { $force }. Esperar a que amaine.
stop-dark = De noche. Esperar a que haya luz.
stop-permission-refused = Denegado: { $permission }. Solo puede levantarlo quien lo denegó.
stop-no-rescue-plan = Esta propiedad no tiene plan de rescate. Escribirlo: punto de encuentro, coordenadas, cobertura, socorrista, urgencias.
stop-no-second = Nadie está preparado para bajar a quien trepe por encima de { $above }. Hace falta una segunda persona: habilitada para rescate en altura, equipada y capaz de llegar a este anclaje.
stop-nobody-may-climb = Aquí nadie puede trepar por sus habilitaciones y su equipo. Ver a quién le falta qué.
stop-no-sign-off = { $person } no tiene la habilitación: { $skill }. La da quien pueda confirmarla, con nombre y día.
stop-no-sign-offs = { $person } no tiene las habilitaciones: { $skills }. Las da quien pueda confirmarlas, con nombre y día.
stop-trainee-no-limit = { $person } está en formación y no tiene límite de altura. Lo pone quien le enseña.
stop-above-height-limit = { $person } puede trepar hasta { $limit-down }; este anclaje está a { $height-up }. Elegir a otra persona o un anclaje más bajo.
stop-above-height-limit-unknown = { $person } puede trepar hasta { $limit-down }, y no se conoce la altura del anclaje. Medirla.
stop-spurs-on-pruning = Espuelas, solo en talas. Trepar sin ellas.
stop-no-stopper = Sistema abierto de cuerda móvil sin nudo de tope. Hacer uno en el extremo de la cuerda.
stop-gear-out-of-use = { $gear } está fuera de uso: { $why }. Tomar otra pieza.
stop-gear-shock-loaded = { $gear } sufrió un tirón de choque. Fuera de uso hasta que lo revise alguien competente.
stop-gear-never-checked = { $gear }: no consta ninguna revisión. Hacerla revisar y anotar el día.
stop-gear-check-due = { $gear }: la revisión tocaba el { $day }. Hacerla revisar y anotar el día.
stop-gear-not-rated = { $gear }: no consta la carga nominal. Leer la marca de la pieza; sin marca se queda en el suelo.
stop-gear-rating = { $gear } tiene una carga nominal de { $rating-down }; hace falta al menos { $least-up }. Tomar otra pieza.
stop-gear-connector-locking = { $gear } no es de cierre automático con doble seguro. Tomar otra pieza.
stop-gear-helmet-strap = { $gear } no tiene barboquejo. Tomar otra pieza.
stop-gear-line-unmeasured = { $gear }: no consta el diámetro de la cuerda. Leerlo en su etiqueta.
stop-gear-line-diameter = { $gear } tiene { $diameter } de grosor; las cuerdas de trabajo van de { $least } a { $most }. Tomar otra.
stop-gear-missing = No hay en orden: { $kind }. Añadir la pieza, o anotar la que haya.
stop-line-length-unknown = { $gear }: no consta su longitud, y hacen falta { $needed-up }. Medirla.
stop-line-short = { $gear } mide { $length-down }; hacen falta { $needed-up }. Tomar una cuerda más larga.
stop-zone-not-clear = { $target } queda dentro de { $radius-up } y no se puede cerrar ni retirar. Elegir otra forma de trabajo, o hacer que se cierre.
stop-anchor-dead = El anclaje { $anchor } está en una rama seca. Elegir madera viva.
stop-anchor-dead-stub = El anclaje { $anchor } es un tocón seco. Elegir madera viva.
stop-anchor-regrowth = El anclaje { $anchor } es rebrote de un antiguo desmoche. Elegir madera que haya crecido así desde el principio.
stop-anchor-union-opening = La unión bajo el anclaje { $anchor } está agrietada o se abre. Elegir otro anclaje.
stop-anchor-thin = El anclaje { $anchor } tiene { $wood-down } de madera viva sin corteza; hacen falta al menos { $least-up }. Elegir uno más grueso.
stop-load-test-failed = El anclaje { $anchor } cedió en la prueba de carga. Elegir otro; por este no sube nadie.
stop-anchor-margin = Este anclaje es demasiado débil para el trabajo. Elegir uno más grueso o más empinado, o acercar la cuerda a la unión.
stop-stem-margin = El fuste es demasiado débil a { $height } para que alguien trepe. Otra forma de trabajo, o una segunda opinión con mejores medidas.
stop-rescue-margin = Este anclaje no aguantaría un rescate. Elegir otro.

# Gaps: what is still to check, and how.

gap-not-looked-at = Nadie ha revisado todavía este árbol.
gap-no-date = Esta revisión no tiene fecha. Anotar la visita a la que pertenece.
gap-full-check = Solo se revisó por encima. Antes de que alguien trepe: la revisión completa.
gap-full-check-over = La revisión completa del { $day } ya no vale. Antes de que alguien trepe: una nueva.
gap-no-climb-judged = Nadie necesita trepar a este árbol, así que no se valoró ninguna trepa. Si aun así alguien va a trepar: antes, una revisión completa con un anclaje.
gap-look-again = Revisado por última vez el { $day }: mirar hoy otra vez { $part }.
gap-life = ¿Vivo, moribundo o muerto? Nadie lo ha dicho.
gap-way-of-working = La forma de trabajo está sin decidir.
gap-species = No se conoce la especie. Para empezar basta el género.
gap-height = Medir la altura.
gap-girth = Medir el perímetro.
gap-lean = Mirar la inclinación. Derecho, a ojo, también vale como respuesta.
gap-lean-new = ¿La inclinación es posterior a la última revisión? Nadie lo ha dicho.
gap-position = Tomar una posición junto al fuste.
gap-crown-radius = Contar a pasos el radio de la copa hasta la punta más lejana.
gap-crown-base = Medir dónde arranca la copa.
gap-other-stem = Medir altura, perímetro e inclinación de cada fuste.
gap-ground-dug = ¿Se excavó o se rellenó el suelo, o se cortaron raíces, cerca del fuste? Nadie lo ha dicho.
gap-wires-asked = ¿Hay cables cerca? Nadie lo ha dicho.
gap-line-not-recorded = Hay cables cerca y la línea no está anotada. Anotarla con su trazado.
gap-base-asked = ¿La base y las raíces parecen sanas? Nadie lo ha dicho.
gap-beetle = ¿A este fresno lo mató el escarabajo? Nadie lo ha dicho.
gap-dieback = ¿Cuánta copa ha perdido este fresno? Nadie lo ha dicho.
gap-part-not-seen = Sin mirar: { $part }.
gap-part-hidden = No visto: { $part }. Lo tapa: { $hidden }.
gap-base-mallet = Golpear la base con el mazo por los cuatro lados.
gap-code-unknown = El código { $code } no está en el libro de códigos. Mientras tanto cuenta como grado 3.
gap-finding-grade = { $name }: darle un grado. Mientras tanto cuenta como grado 3.
gap-code-without-sentence = { $name }: este grado no tiene frase en el libro de códigos. Escribirla. Mientras tanto cuenta como grado 3.
gap-piece-length = ¿Cuánto mide la pieza más larga que va a bajar?
gap-anchor = No se eligió ningún anclaje.
gap-anchor-height = Anclaje { $anchor }: medir su altura.
gap-anchor-diameter = Anclaje { $anchor }: leer su diámetro en la unión.
gap-anchor-angle = Anclaje { $anchor }: leer el ángulo de la rama desde la vertical.
gap-anchor-from-union = Anclaje { $anchor }: ¿a qué distancia de la unión queda la cuerda?
gap-anchor-union = Anclaje { $anchor }: mirar la unión.
gap-anchor-state = Anclaje { $anchor }: ¿la madera está viva y creció así desde el principio?
gap-ascent-side = ¿Por qué lado se sube?
gap-climber = Decir quién trepa.
gap-second = Decir quién es la segunda persona.
gap-second-unknown = La segunda persona que se nombró no está en la cuadrilla.
gap-stopper = ¿Hay un nudo de tope en el extremo de la cuerda?
gap-crew = No hay nadie anotado en la cuadrilla. Anotar quién trepa y quién está preparado, con sus habilitaciones.
gap-gear = No hay equipo anotado. Anotar aquello de lo que se cuelga quien trepa, con cargas nominales y revisiones.
gap-section-walls = La sección a { $height } no dice nada de sus paredes. Golpearla todo alrededor, o taladrarla.
gap-test-and-readings-disagree = La prueba de carga y las lecturas de este anclaje no concuerdan. Medir el anclaje otra vez.
gap-weather = No se ha anotado el tiempo de esta hora.
gap-weather-wind = ¿Qué fuerza tiene ahora el viento?
gap-weather-thunder = ¿Se han oído truenos? Escuchar, y luego decirlo.
gap-weather-ice = ¿Hay hielo o nieve en la corteza o en el suelo?
gap-weather-bark = ¿Está mojada la corteza?
gap-weather-light = ¿Es de día, de noche, o amanece o anochece?
gap-wire-distance = { $line }: medir la distancia desde la copa.
gap-wire-position-accuracy = { $line }: no se conoce la precisión de la posición del árbol. Medir la distancia en el lugar.
gap-permission = { $permission }: sin preguntar todavía.
gap-permission-waiting = { $permission }: preguntado, sin respuesta todavía.
gap-permission-undated = { $permission }: con respuesta, pero nadie dijo de qué día.
gap-rescue-plan = Esta propiedad no tiene plan de rescate.
gap-rescue-meeting-point = Plan de rescate: ¿dónde se espera a la ambulancia?
gap-rescue-grid = Plan de rescate: ¿qué coordenadas se dictan?
gap-rescue-signal = Plan de rescate: ¿hay cobertura de teléfono?
gap-rescue-first-aider = Plan de rescate: ¿quién es el socorrista?
gap-rescue-casualty-unit = Plan de rescate: ¿cuáles son las urgencias más cercanas?

# Caps at refer, then at limited.

cap-grade-3-on-route = { $place }: { $name }, grado 3. Otro recorrido, otra forma, o una segunda opinión.
cap-bracket-not-named = { $name }. Que alguien lo identifique antes de que nadie trepe.
cap-dead-tree = Todo el árbol está muerto. Antes, una plataforma, una grúa, un árbol vecino o la tala.
cap-base-needs-section = Algo en la base pide una sección: golpearla en ocho puntos, o taladrarla.
cap-opening = El fuste está abierto en { $opening } a { $height }. Una segunda opinión, u otra forma.
cap-shell-thin = La pared sana es delgada a { $height }. Una segunda opinión, u otra forma.
cap-strength-loss = La pudrición ha quitado el { $loss } de la resistencia a { $height }. Una segunda opinión, u otra forma.
cap-part-seen = Visto solo en parte: { $part }. No trepar por nada que cuelgue de ahí hasta haberlo visto.
cap-full-check-older = La revisión completa es del { $day }; hoy solo se miró lo que cambia de un día a otro. Mirar fuste, uniones y copa al subir.
cap-anchor-union-part-seen = La unión bajo el anclaje { $anchor } no se ve desde aquí. Mirarla antes de que nadie se cuelgue.
cap-included-bark-anchor = Corteza incluida en la unión del anclaje { $anchor }. Llevar la cuerda pegada a la unión y a plomo; sin tirones de lado.
cap-included-bark = { $name } por debajo del anclaje, entre ramas casi igual de gruesas. Ninguna carga que las separe.
cap-wind = Viento { $force }: bajar cuando arrecie.
cap-dusk = Poca luz: estar abajo antes de que oscurezca.
cap-wet-bark = Corteza mojada: pasos cortos, cabo siempre puesto.
cap-wire-near = { $line }: a { $distance-down }. Nada se acerca a menos de { $approach-up }: ni persona, ni herramienta, ni cuerda, ni pieza que cae.
cap-rescue-own-anchor = Quien rescata necesita un anclaje propio.
cap-no-slack = Sin cuerda floja, y nunca por encima del anclaje.

limit-trainee-within-reach = { $person } está en formación: alguien con habilitación se queda a su alcance.
limit-throw-beyond-reach = La línea tiene que subir a { $height-up }; { $person } lanza hasta { $reach-down }. Instalarla en dos pasos, o que lance otra persona.
limit-throw-beyond-a-good-hand = La línea tiene que subir a { $height-up }, más de lo que lanza una buena mano. Instalarla en dos pasos o con lanzador.

# What took points; each is a limit when it took enough.

cause-anchor = El anclaje no es fuerte: movimientos suaves, la cuerda cerca de la unión.
cause-stem = El fuste no es fuerte a { $height }: sin péndulos ni piezas pesadas contra él.
cause-modulus = El fuste ha perdido madera a { $height }: sin péndulos ni piezas pesadas contra él.
cause-finding = { $place }: { $name } ({ $grade }). Mirarlo otra vez de camino, y bajar si está peor.
cause-part-seen = Visto solo en parte: { $part }. Mirarlo antes de colgarse de ahí.
cause-anchor-union-not-seen = La unión del anclaje no se vio. Mirarla antes de que nadie se cuelgue.
cause-hidden-ground = Lo que no se ve desde el suelo: seguir mirando arriba.
cause-hidden-ground-tested = Lo que no se ve desde el suelo, aunque la prueba de carga aguantó: seguir mirando arriba.

place-on-route = en el recorrido
place-under-anchor = bajo el anclaje
place-above = por encima del recorrido
place-near = cerca del recorrido
place-elsewhere = en otra parte del árbol

# Remarks.

remark-load-test-first = Antes de dejar el suelo: cargar el anclaje con el peso de dos personas solo en la cuerda, sin nadie debajo, y observarlo.
remark-load-test-held = La prueba de carga aguantó { $force-down } = { $ratio } × la carga de trabajo. Dice poco de un resbalón o de un tirón de lado.
remark-load-test-older = La prueba de carga es de otro día y hoy no cuenta.
remark-load-test-without-mass = La prueba de carga no tiene masa anotada y no cuenta.
remark-last-look = Revisado por última vez el { $day }.
remark-work-done = El trabajo en este árbol está hecho: su zona ya no cuenta entre lo que hay que cerrar.
remark-other-access-not-asked = ¿Se podría hacer desde el suelo, con plataforma, con grúa o desde un árbol vecino? Nadie lo ha dicho.
remark-bark-usual = La corteza no se midió: cuenta su grosor habitual.
remark-wood-by-genus = Cuenta la madera del género, con más dispersión: no se dijo la especie, o su resistencia no está en las tablas.
remark-wood-general = No hay resistencia publicada para esta especie: cuenta el valor general, con mucha dispersión.
remark-height-unusual = { $height } es poco habitual para este perímetro; lo habitual sería { $low } a { $high }. Medir otra vez.
remark-downhill-all-round = Nadie dijo hacia dónde va cuesta abajo: el radio mayor cuenta todo alrededor.
remark-slope-not-given = No se dio la pendiente: en terreno inclinado, dejar más distancia cuesta abajo.
remark-next-look-open = La próxima revisión no tiene día fijado.
remark-no-plan-worst-system = Sin plan de trepa: cuenta el sistema de cuerda que más carga un anclaje.
remark-system-counts-as-open = ¿Sistema de cuerda abierto o cerrado? Nadie lo dijo; cuenta como abierto.
remark-route-sides-unknown = No se conoce el lado de subida o el rumbo de la rama del anclaje: todo hallazgo en la copa cuenta como si estuviera en el recorrido.
remark-mass-usual = No se conoce la masa con equipo de quien trepa: cuentan { $mass }.
remark-anchor-read-as-by-eye = No se sabe cómo se leyó el diámetro del anclaje: cuenta como leído a ojo.
remark-limb-length-usual = No se leyó la longitud de la rama del anclaje: cuenta el radio de la copa.
remark-parent-diameter-missing = No se leyó el diámetro del fuste en el anclaje: la unión cuenta como la de dos fustes iguales.
remark-wire-dead-today = { $line }: su titular confirmó que hoy está sin tensión. Asegurarse antes de que nadie empiece.

# The next measurement.

next-height = Medir la altura con dos visuales y dos ángulos.
next-girth = Medir el perímetro con cinta.
next-lean = Medir la inclinación desde dos lados en ángulo recto.
next-species = Identificar la especie por hoja, yema o corteza.
next-climber = Pesar con su equipo a quien trepa.
next-anchor-photo = Leer el diámetro del anclaje en una foto a escala.
next-anchor-tape = Medir el anclaje con cinta en altura, desde otro anclaje o una plataforma.
next-anchor-union = Mirar desde otro lado la unión bajo el anclaje.
next-section-drill = Taladrar tres veces más alrededor de la sección a { $height }.
next-look-again = Mirar otra vez lo que se vio solo en parte: { $part }.

# Wires.

wire-keep = { $line }: a { $distance-down } de la copa. Quedarse a { $approach-up } o más ({ $level }).
wire-ask-owner = { $line }: a { $distance-down } de la copa, tensión desconocida. Preguntar a su titular.
wire-no-contact = { $line }: a { $distance-down } de la copa. Sin contacto ({ $level }).
wire-dead-today = { $line }: su titular confirmó que hoy está sin tensión.
wire-distance-unknown = { $line }: no se conoce la distancia desde la copa. Medirla.

# What to do about what lies inside a zone.

zone-empty-rooms = { $target }: desalojar las habitaciones, o trabajar de otra forma.
zone-close-off = { $target }: cerrar el paso mientras se trabaja.
zone-move-away = { $target }: retirar lo que haya allí.
zone-guard = { $target }: no se puede cerrar; alguien lo vigila.
zone-protect = { $target }: cubrirlo o protegerlo.
zone-ask-neighbour = { $target } es del vecino: pedírselo y decirle la hora.
zone-call-line-owner = { $line } cruza la zona de caída: llamar antes a su titular.
zone-crosses-edge = La zona a despejar pasa del borde de la propiedad: hablar con el vecino.

conflict-keep-out-overlaps = { $tree } y { $other } están a { $apart-down }; hacen falta { $needed-up }. No al mismo tiempo.

# The working, line by line.

work-height-95 = altura en su extremo superior
work-stem-length = longitud del fuste
work-keep-out-prune = distancia de seguridad, poda
work-keep-out-section-free-drop = distancia de seguridad, tramos en caída libre
work-keep-out-section-rigged = distancia de seguridad, tramos con retención
work-keep-out-fell-whole = distancia de seguridad, talado entero
work-keep-out-fell-shortened = distancia de seguridad, talado después de acortar
work-keep-out-inspect-only = distancia de seguridad, inspección
work-keep-out-platform-or-crane = distancia de seguridad, plataforma o grúa
work-keep-out-no-work = distancia de seguridad, ningún trabajo
work-downhill = distancia de seguridad cuesta abajo
work-rope-length = cuerda: la más corta que sirve
work-root-radius = radio crítico de las raíces
work-wire-distance = cable: distancia desde la copa
work-wire-approach = cable: distancia de aproximación
work-section-hole = sección: hueco redondo con la misma pared media
work-wagener = sección: pérdida de resistencia según Wagener
work-coder = sección: pérdida de resistencia según Coder
work-smiley-fraedrich = sección: pérdida de resistencia según Smiley y Fraedrich
work-shell-ratio = sección: pared más delgada entre radio
work-modulus-left = sección: módulo que queda en la dirección más débil
work-modulus-left-steady = sección: módulo que queda, cota inferior que toma el dictamen
work-anchor-wood = anclaje: diámetro de la madera
work-anchor-force = anclaje: carga de trabajo
work-anchor-lever = anclaje: brazo desde la unión
work-anchor-pull = anclaje: momento del tirón
work-anchor-own-weight = anclaje: momento del propio peso de la rama
work-anchor-stress = anclaje: tensión de flexión
work-anchor-strength = anclaje: resistencia de la rama en su unión
work-anchor-margin = anclaje: margen al trabajar
work-rescue-margin = anclaje: margen en un rescate
work-slip-margin = anclaje: margen en un resbalón
work-stem-diameter = fuste: diámetro con corteza
work-stem-wood = fuste: diámetro de la madera
work-stem-length-above = fuste: longitud por encima de la sección
work-stem-mass = fuste: masa por encima de la sección
work-stem-own-moment = fuste: momento de su propio peso
work-stem-climber-moment = fuste: momento de quien trepa
work-stem-modulus = fuste: módulo resistente que queda
work-stem-stress = fuste: tensión de flexión
work-stem-margin = fuste: margen
work-structure = factor de la estructura
work-finding-factor = factor de un hallazgo
work-score = puntuación

## Pages and offers

# Pages.
page-book = Cuaderno de campo
page-book-lead = Todavía no hay propiedades. Añadir aquella en la que se está: el nombre ya va puesto, y lo demás puede esperar. O incorporar un archivo de propiedad.
page-site-of-day = Propiedad del { $day }
page-nothing-found = Nada coincide con “{ $search }”. Acortar la búsqueda, o borrarla para ver todo.
page-away-km = a { $far } km
page-away-mi = a { $far } mi
page-here = aquí
page-backup = Última copia
page-never-backed-up = ninguna todavía
page-backup-why = Una copia en este teléfono sirve si se daña el cuaderno. Si se pierde el teléfono, solo sirve un paquete en otro teléfono o en la oficina.
page-backups = Copias guardadas
page-backups-why = Si se daña este cuaderno, la última copia buena ocupa su lugar por sí sola, y se recupera lo anotado después hasta donde se pueda. No se borra nada.
page-damage = Daños
page-damage-kept = reparado el { $day }; los archivos dañados se guardan
page-settings = Ajustes
page-left-hand = izquierda
page-right-hand = derecha
page-people = Personas
page-people-count = { $count ->
    [0] nadie todavía
    [one] una persona
   *[other] { $count } personas
}
page-people-lead = Nadie todavía. Añadir a quien trepa o está listo para el rescate: quién puede trepar depende de sus habilitaciones.
page-training-next = { $done } de { $of } destrezas confirmadas · sigue: { $next }
page-training-all = confirmadas las { $of } destrezas
page-skill-next = sin confirmar todavía: es la que sigue
page-skill-later = sin confirmar; antes van otras
page-knots-known = confirmados, abajo, todos los nudos que necesita quien trepa
page-knots-missing = faltan por confirmar, abajo: { $knots }
page-knots-lead = Un nudo se sabe cuando se hace, se peina, se azoca y se carga, cerca del suelo y sin fallo. Menos de { $aim } es una meta, nunca una obligación.
page-knot-needed = sin confirmar todavía; quien trepa lo necesita
page-knot-later = sin confirmar
page-tied-in = hecho en { $time }
page-not-yet = vale desde ese día
page-sign-off-lapsed = { $skill }: caducada, valía hasta el { $day }
page-sign-off-lapses = { $skill }: caduca después del { $day }
page-sign-offs-lapsed = { $count ->
    [one] una habilitación caducada
   *[other] { $count } habilitaciones caducadas
}
page-sign-offs-lapse = { $count ->
    [one] una habilitación caduca en 30 días
   *[other] { $count } habilitaciones caducan en 30 días
}
page-holds-until = hasta el { $day }
page-ended-on = terminó el { $day }
page-climbs-lead = En formación se anota cada trepa: primero bajo, después alto, y nunca a solas.
page-climb-at = { $day } · { $place }
page-climbed-with = con { $who }
page-above-limit = por encima del límite de altura
page-gear = Equipo
page-gear-lead = Todavía no hay equipo. Anotar primero lo que sostiene a personas: una pieza sin revisión anotada no se usa.
page-gear-barred = { $count ->
    [0] Todo en orden
    [one] Una pieza no se debe usar
   *[other] { $count } piezas no se deben usar
}
page-gear-out-of-use = Fuera de uso
page-gear-not-to-be-used = No usar
page-gear-in-order = En orden
page-bring-back-first = Está fuera de uso. Antes hay que volver a ponerla en uso.
page-codebook = Libro de códigos
page-codebook-lead = Los nombres son de la cuadrilla; lo que un código significa para la valoración no cambia con el nombre. Los impedimentos del método valen diga lo que diga este libro.
page-codes-count = { $count ->
    [one] un código
   *[other] { $count } códigos
}
page-code-starter = viene con la aplicación
page-code-own = propio de la cuadrilla
page-code-means = significa: { $kind }
page-code-stops = prohíbe trepar desde el grado { $grade }
page-code-is-first = Ya es el primero.
page-code-is-last = Ya es el último.
page-grade-without-sentence = sin frase todavía: este grado no se puede elegir
page-rules = Reglas
page-rules-lead = Los mínimos publicados no se tocan. Los valores propios los cambia la cuadrilla, dentro de su margen y con nombre. Las normas locales van primero.
page-rules-changed = { $count ->
    [0] como viene
    [one] un valor cambiado por la cuadrilla
   *[other] { $count } valores cambiados por la cuadrilla
}
page-rule-range = de { $range }
page-rule-stays = queda como está publicado
page-rule-ships = de origen { $value }
rule-group-measure = Lecturas
rule-group-check = Cuánto vale una revisión completa
rule-group-wood = Madera
rule-group-load = Cargas
rule-group-stem = Fuste
rule-group-margin = Márgenes
rule-group-test = Prueba de carga
rule-group-stop = Impedimentos
rule-group-cap = Límites del dictamen
rule-group-finding = Hallazgos
rule-group-score = Puntuación
rule-group-zone = Zona de caída y distancia de seguridad
rule-group-wire = Cables
rule-group-heat = Calor
rule-group-gear = Equipo
rule-group-cost = Tiempo que cuesta una lectura
rule-row-measure-breast_height_m = Altura de pecho: donde se toma el perímetro, por el lado de arriba
rule-row-measure-height-tangent_cv = Error de una altura con dos ángulos y una distancia horizontal
rule-row-measure-height-percent_cv = Error de una altura con dos lecturas en tanto por ciento y una distancia horizontal
rule-row-measure-height-sine_cv = Error de una altura con dos ángulos y dos distancias inclinadas
rule-row-measure-height-two_positions_cv = Error de una altura desde dos posiciones
rule-row-measure-height-stick_cv = Error de una altura con el método del palo
rule-row-measure-height-tape_cv = Error de una altura con cinta o pértiga a lo largo del fuste
rule-row-measure-height-by_eye_cv = Error de una altura a ojo
rule-row-measure-height-taken_over_cv = Error de una altura tomada de otro inventario
rule-row-measure-sight-tape_cv = Error de la distancia al árbol con cinta a nivel
rule-row-measure-sight-paces_cv = Error de la distancia al árbol medida a pasos
rule-row-measure-sight-angle_deg = Error del ángulo a la cima o a la base, tomado a pulso
rule-row-measure-girth-tape_cv = Error de un perímetro con cinta
rule-row-measure-girth-diameter_cv = Error de un perímetro calculado a partir del diámetro
rule-row-measure-girth-by_eye_cv = Error de un perímetro a ojo
rule-row-measure-girth-taken_over_cv = Error de un perímetro tomado de otro inventario
rule-row-measure-lean-by_eye_deg = Error de una inclinación a ojo; derecho a ojo es 0 con este error
rule-row-measure-lean-two_sides_deg = Error de una inclinación leída desde dos lados
rule-row-measure-lean-one_side_deg = Error de una inclinación leída desde un lado
rule-row-measure-lean-taken_over_deg = Error de una inclinación tomada de otro inventario
rule-row-measure-declination_unknown_deg = Error de un rumbo de brújula sin declinación conocida
rule-row-measure-crown-paces_m = Error de un radio de copa medido a pasos
rule-row-measure-anchor-height_cv = Error de la altura de un anclaje
rule-row-measure-anchor-tape_aloft_cv = Error del diámetro de un anclaje con cinta en altura
rule-row-measure-anchor-known_size_cv = Error del diámetro de un anclaje junto a algo de tamaño conocido
rule-row-measure-anchor-scaled_photo_cv = Error del diámetro de un anclaje en una foto a escala
rule-row-measure-anchor-by_eye_cv = Error del diámetro de un anclaje a ojo
rule-row-measure-limb_angle_deg = Error del ángulo de una rama leído desde el suelo
rule-row-measure-limb_length_cv = Error de la longitud de una rama
rule-row-measure-shell-drill_cm = Error de una pared leída con taladro
rule-row-measure-shell-core_cm = Error de una pared leída en un testigo
rule-row-measure-shell-probe_cm = Error de una pared leída con varilla en la cavidad
rule-row-measure-shell-picture_cm = Error de una pared leída en una imagen de sección
rule-row-measure-shell-one_reading_spread = Una lectura: cuánto puede apartarse de ella la pared en otro punto
rule-row-measure-shell-two_readings_spread = Dos lecturas: cuánto puede apartarse de ellas la pared entre medias
rule-row-measure-bark_cv = Error de la corteza tomada de la especie y no de una lectura
rule-row-measure-mallet-sound_low = Sano bajo el mazo: pared más delgada entre radio
rule-row-measure-mallet-sound_high = Sano bajo el mazo: pared más gruesa entre radio
rule-row-measure-mallet-dull_low = Apagado bajo el mazo: pared más delgada entre radio
rule-row-measure-mallet-dull_high = Apagado bajo el mazo: pared más gruesa entre radio
rule-row-measure-mallet-hollow_low = Hueco bajo el mazo: pared más delgada entre radio
rule-row-measure-mallet-hollow_high = Hueco bajo el mazo: pared más gruesa entre radio
rule-row-measure-position-outlier_mads = Una posición a tantas desviaciones usuales del centro se descarta
rule-row-measure-position-tap_mm = Un dedo en el plano se desvía esto en la pantalla
rule-row-measure-position-plan_m = Lo que muestra el plano se conoce con esta precisión
rule-row-measure-height_check_spreads = Por una altura a tantas dispersiones de la usual se pregunta
rule-row-check-carries_days = Cuánto vale una revisión completa si se vuelven a mirar las partes que cambian
rule-row-wood-confirmed_cv = Dispersión de una resistencia leída en una tabla publicada
rule-row-wood-memory_cv = Dispersión de una resistencia de memoria
rule-row-wood-general_cv = Dispersión cuando solo queda la función general de la densidad
rule-row-wood-density_cv = Dispersión de una densidad en verde de tabla
rule-row-wood-limb_factor_low = Nudos y fibra de ramas reales: lo más débil
rule-row-wood-limb_factor_high = Nudos y fibra de ramas reales: lo más fuerte
rule-row-wood-included_bark_low = Resistencia que queda con corteza incluida, la menor
rule-row-wood-included_bark_high = Resistencia que queda con corteza incluida, la mayor
rule-row-wood-aspect_full_at = Rama entre madre desde la que una unión codominante cuenta como la más débil
rule-row-wood-aspect_none_at = Rama entre madre hasta la que una unión cuenta como de rama
rule-row-load-climber_kg = Persona con equipo cuando no consta la masa
rule-row-load-climber_se_kg = Error de esa masa
rule-row-load-named_climber_cv = Error de una masa anotada con equipo
rule-row-load-work_factor_low = Factor dinámico del trabajo en altura, el más suave
rule-row-load-work_factor_high = Factor dinámico del trabajo en altura, el más brusco
rule-row-load-pull_stray_deg = Cuánto puede desviarse de la vertical el tiro en un anclaje
rule-row-load-lever_extra_cm = Distancia mínima de la cuerda a la unión, además de medio diámetro
rule-row-load-limb_weight_from_deg = Una rama más tendida que esto carga además con su peso
rule-row-load-limb_volume_factor = Volumen de una rama entre el de un cilindro
rule-row-load-limb_branches_share = Se añade a la masa de una rama por sus ramillas
rule-row-load-limb_centre_share = Centro de masa de una rama, como parte de su longitud
rule-row-load-rescue_kg = Accidentado y rescatador con equipo en un sistema
rule-row-load-rescue_factor = Factor dinámico de un rescate
rule-row-load-slip_m = Caída de un resbalón con cuerda floja
rule-row-load-slip_stretch_low_m = Estiramiento de la cuerda bajo la persona, cuerda corta
rule-row-load-slip_stretch_high_m = Estiramiento de la cuerda bajo la persona, cuerda larga
rule-row-stem-form_factor_low = Volumen del fuste entre el de un cilindro, el más esbelto
rule-row-stem-form_factor_high = Volumen del fuste entre el de un cilindro, el más lleno
rule-row-stem-branch_share_low = Masa de las ramas como parte de la del fuste, copa más ligera
rule-row-stem-branch_share_high = Masa de las ramas como parte de la del fuste, copa más pesada
rule-row-stem-centre_share = Centro de masa, como parte de la longitud del fuste
rule-row-stem-centre_se = Error de esa parte
rule-row-stem-taper_exponent = Cómo adelgaza el fuste: potencia de la longitud que queda arriba
rule-row-stem-taper_cv = Error de un diámetro calculado por el adelgazamiento
rule-row-stem-sections_sampled = Se muestrean como mucho tantas de las secciones más débiles
rule-row-stem-rim_points = Puntos del borde donde se toma la tensión de una sección
rule-row-margin-stop_at = Un margen del anclaje tan bajo prohíbe trepar
rule-row-margin-full_at = Un margen tan alto no quita puntos
rule-row-margin-rescue_limits_below = Margen de rescate por debajo del cual quien rescata necesita otro anclaje
rule-row-margin-rescue_bars_below = Margen de rescate por debajo del cual nadie trepa
rule-row-margin-slip_limits_below = Margen de resbalón por debajo del cual no se admite cuerda floja
rule-row-margin-modulus_full_pct = Resistencia de una sección que queda y no quita puntos
rule-row-margin-modulus_none_pct = Resistencia de una sección con la que la estructura no cuenta nada
rule-row-test-least_samples = Menos muestras que estas de acuerdo con una prueba que aguantó: prueba y lecturas no casan
rule-row-stop-strength_loss_pct = Pérdida de resistencia que prohíbe trepar
rule-row-stop-wind_force = Viento con el que se deja de trepar y talar
rule-row-stop-thunder_min = Espera después del último trueno
rule-row-stop-thunder_flash_s = Del relámpago al trueno esto o menos: ponerse a cubierto
rule-row-stop-rescue_height_m = Por encima de esta altura hay alguien formado en rescate
rule-row-stop-roots_years = Raíces cortadas hace menos de estos años prohíben trepar hasta que alguien las dé por buenas con nombre
rule-row-stop-root_radius_ratio = Radio crítico de raíces entre diámetro del fuste
rule-row-stop-root_radius_sensitive_ratio = Lo mismo para árboles viejos y especies sensibles
rule-row-stop-ash_dieback_pct = Fresno con más copa perdida que esto
rule-row-stop-anchor_cm = Anclaje más delgado
rule-row-stop-anchor_brittle_cm = Anclaje más delgado en especies quebradizas
rule-row-cap-shell_ratio = Pared sana entre radio por debajo de esto: segunda opinión
rule-row-cap-wagener_pct = Pérdida de resistencia según Wagener desde aquí: segunda opinión
rule-row-cap-smiley_fraedrich_pct = Pérdida de resistencia según Smiley y Fraedrich desde aquí: segunda opinión
rule-row-cap-opening_deg = Abertura mayor que esto: segunda opinión
rule-row-cap-aspect_included = Corteza incluida con rama entre madre por encima de esto: con límites
rule-row-cap-wind_caution_force = Viento que limita la trepa
rule-row-finding-grade_1 = Factor de un grado 1 en el recorrido o encima
rule-row-finding-grade_2 = Factor de un grado 2 en el recorrido o encima
rule-row-finding-grade_3 = Factor de un grado 3 en el recorrido o encima
rule-row-finding-near_m = A qué distancia del recorrido un hallazgo cuenta más
rule-row-finding-near_power = Potencia de un factor cerca del recorrido
rule-row-finding-far_power = Potencia de un factor en otro sitio
rule-row-finding-others_power = En una parte el peor cuenta entero, los demás con esta potencia
rule-row-score-hidden_ground = Lo que el suelo esconde, para que nadie lea 100
rule-row-score-hidden_ground_tested = Lo mismo después de una prueba de carga que aguantó
rule-row-score-no_stop_from = Extremo bajo de la puntuación desde el que no hay impedimento
rule-row-score-limited_from = Extremo bajo de la puntuación desde el que queda trepar con límites
rule-row-score-limit_named_from = Una causa que cuesta esto se nombra como límite
rule-row-score-sensitivity_bins = Clases para hallar la siguiente mejor lectura
rule-row-zone-fell-everyone_lengths = Talar: alturas de árbol que guardan todos menos quien corta
rule-row-zone-fell-crew_lengths = Talar: alturas de árbol para la cuadrilla con tarea
rule-row-zone-conflict_lengths = Alturas de árbol entre un árbol que se tala y otro trabajo
rule-row-zone-removal_m = Desmontar desde la copa: distancia desde la proyección de la copa
rule-row-zone-beyond_drop_m = Personas sin tarea: más allá de la zona de caída
rule-row-zone-prune_barrier_m = Podar: barrera más allá de la proyección de la copa
rule-row-zone-piece_lengths = Longitudes de la pieza que se corta
rule-row-zone-piece_speed_ms = Velocidad hacia fuera de una pieza empujada a mano
rule-row-zone-piece_hold_m = Distancia de una pieza al fuste cuando se suelta
rule-row-zone-swing_pieces = Una pieza con retención se balancea tantas longitudes suyas fuera de la copa
rule-row-zone-slope_share = Ladera abajo: el radio crece con esta parte de la pendiente
rule-row-zone-slope_most = Pendiente desde la que el radio ya no crece
rule-row-zone-height_end_pct = Extremo del intervalo de la altura con que se toma la longitud del fuste
rule-row-zone-outline_points = Vértices de un contorno
rule-row-wire-approach_m = Distancia de aproximación sin cualificación, hasta 50 kV
rule-row-wire-approach_step_m = Se añade por cada 10 kV o parte por encima de 50 kV
rule-row-wire-approach_step_kv = El escalón de tensión
rule-row-wire-approach_from_kv = La tensión hasta la que vale la primera distancia
rule-row-wire-consult_m = Dentro de esta distancia se pregunta antes al titular de la línea
rule-row-wire-caution_lengths = Dentro de tantas distancias de aproximación un conductor limita la trepa
rule-row-heat-caution_f = Índice de calor en °F: cuidado
rule-row-heat-extreme_caution_f = Índice de calor en °F: mucho cuidado
rule-row-heat-danger_f = Índice de calor en °F: peligro
rule-row-heat-extreme_danger_f = Índice de calor en °F: peligro extremo
rule-row-gear-line_kn = Resistencia mínima de una cuerda de trabajo o un cabo
rule-row-gear-connector_kn = Resistencia mínima de un conector
rule-row-gear-friction_saver_kn = Resistencia mínima de un salvarramas
rule-row-gear-line_least_mm = Cuerda de trabajo más delgada
rule-row-gear-line_most_mm = Cuerda de trabajo más gruesa
rule-row-gear-check_months = Revisión a fondo de lo que sostiene a una persona
rule-row-gear-throw_routine_m = Altura de una línea de lanzar por rutina
rule-row-gear-throw_good_hand_m = Altura de una línea de lanzar con buena mano
rule-row-gear-rope_reserve_m = Cuerda que queda en el suelo bajo quien está en el anclaje
rule-row-gear-knot_aim_s = Meta para hacer un nudo; se anota, nunca se exige
rule-row-cost-height_s = Altura con dos distancias inclinadas y dos ángulos
rule-row-cost-girth_s = Perímetro con cinta
rule-row-cost-lean_s = Inclinación desde dos lados
rule-row-cost-anchor_photo_s = Diámetro del anclaje en una foto a escala
rule-row-cost-anchor_tape_s = Diámetro del anclaje con cinta en altura
rule-row-cost-limb_s = Ángulo y longitud de una rama
rule-row-cost-section_drill_s = Tres lecturas más de taladro en una sección
rule-row-cost-mallet_s = Reloj del mazo alrededor del fuste
rule-row-cost-load_test_s = Prueba de carga del anclaje
rule-row-cost-species_s = Especie por hoja, yema o corteza
rule-row-cost-climber_s = Persona pesada con su equipo
rule-row-cost-look_s = Una parte de la vuelta al árbol mirada otra vez
page-first-use = primer uso { $day }
page-used-by = lo usa { $name }
page-site-lead = Todavía no hay árboles. Empezar por la entrada: añadir el primer árbol donde se está. El plan de rescate y la visita de hoy van antes de que nadie trepe.
page-today = Hoy
page-no-plan = Aún no hay plano: basta con dar a un árbol su posición para que aparezca.
page-visit = Visita
page-visit-none = hoy no se ha empezado ninguna
page-visit-why = El tiempo, quién puede trepar y cada revisión de un árbol pertenecen a la visita del día.
page-missing = aún no se sabe
page-tree-count = { $count ->
    [0] sin árboles todavía
    [one] un árbol
   *[other] { $count } árboles
}
page-genus = { $genus }, cualquier especie
page-client-and-trees = { $client } · { $trees }
page-trainee = en formación
page-up-to = hasta { $height }
page-signed-off = por { $by }, { $day }
page-out-of-use = fuera de uso: { $why }
page-shock-load = tirón brusco el { $day }; por revisar
page-undo-gear = Deshacer el último cambio de equipo
page-next-check = próxima revisión { $day }
page-last-check = última revisión { $day }
page-corners = { $count ->
    [one] una esquina
   *[other] { $count } esquinas
}
page-occupancy-missing = no se sabe cuánto se usa
page-target-from-file = Del archivo de mapa, { $number }
page-voltage-missing = tensión desconocida
page-at-hour = { $what } a las { $hour }
page-thunder-ago = se oyó hace { $ago }
page-no-thunder = se escuchó: ninguno
page-ice-yes = hielo o nieve
page-ice-no = sin hielo
page-wet-bark-yes = corteza mojada
page-wet-bark-no = corteza seca
page-yes = sí
page-no = no
page-dug-yes = excavado, rellenado o con raíces cortadas
page-dug-no = sin excavar
page-dead-since = muerto desde { $day }
page-toward = { $value } hacia el { $side }
page-keep-out = Nadie a menos de
page-apart = No a la vez que
page-work-done-nothing-closed = el trabajo está hecho: nada que cerrar
page-apart-more = y { $count } más. La página de cada árbol nombra aquellos con los que no se puede trabajar a la vez.
page-not-looked-at = sin mirar
page-look-hidden = { $look }; lo tapa: { $hidden }
page-no-date = sin fecha
page-nothing-to-compare = No hay una visita anterior con la que comparar.
page-days-compared = { $then } y { $now }
page-verdict = Dictamen
page-score-label = Puntuación
page-judged-signed = como se firmó entonces
page-judged-anew = calculado de nuevo con lo que se sabía entonces
page-verdict-lower = Peor: más grave que entonces.
page-verdict-better = Mejor: menos grave que entonces.
page-unchanged = Igual que entonces.
page-not-judged-then = No se puede comparar: entonces no se valoró.
page-not-judged-now = No se puede comparar: ahora no está valorado.
page-intervals-overlap = Sin cambio que la puntuación distinga: los intervalos se solapan.
page-score-higher = Más alta: los intervalos no se tocan.
page-score-lower = Más baja: los intervalos no se tocan.
page-change-read-once = No se puede comparar: leído solo en una de las dos revisiones.
page-change-unread = Sin leer en ninguna de las dos revisiones.
page-finding-unchanged = Igual que entonces
page-change-larger = Mayor: { $by } ({ $low } a { $high }), más de lo que pueden errar las lecturas.
page-change-smaller = Menor: { $by } ({ $low } a { $high }), más de lo que pueden errar las lecturas.
page-change-within = Sin cambio que las lecturas distingan: { $by } ({ $low } a { $high }).
page-thinnest-wall = Pared más delgada a { $height }
page-finding-new = Nuevo
page-finding-worse = Peor que entonces
page-finding-better = Mejor que entonces
page-finding-cleared = Ya no está: dado por bueno
page-finding-not-found = Ya no está: buscado y no hallado de nuevo
page-finding-not-looked-at = Sin mirar de nuevo
page-zones-described = El suelo alrededor del árbol { $tag }: dónde puede caer algo y dónde no está nadie ({ $way })
page-base-mallet = Mazo en la base
page-no-grade = sin grado todavía
page-finding-here = Hallazgo aquí
page-dead-tree = árbol muerto
page-dead-tree-help = Ni hojas ni yemas vivas en ninguna parte; nadie sabe desde cuándo está muerto.
page-size-up-to = hasta { $height }
page-size-over = más de { $height }
page-wall-at = { $wall } de pared sana en el lado { $side }
page-modulus-left = lo más débil: queda del { $low } al { $high }
page-sounded = { $count ->
    [one] golpeado en un punto
   *[other] golpeado en { $count } puntos
}
page-section-at = Sección a { $height }
page-section-on = Sección a { $height } · árbol { $tag }
page-weakest = Lo más débil hacia el { $side } ({ $bearing }): queda cerca del { $left } de la resistencia a flexión, del { $low } al { $high } según las lecturas hechas
page-opening-wide = abertura de { $width }
page-weakest-open = Con el perímetro y una lectura de la pared, o con el mazo, se ve dónde es más débil.
page-anchor-judged = la valoración se apoya en él
page-to-close-while = { $count ->
    [one] mientras se trabaja en el árbol { $trees }, hasta { $distance } de él
   *[other] mientras se trabaja en los árboles { $trees }, hasta { $distance } de ellos
}
page-limbs = { $count ->
    [one] una rama por alcanzar
   *[other] { $count } ramas por alcanzar
}
page-no-limbs = Aún no se nombró ninguna rama.
page-plan-on = Trepa en el anclaje { $anchor }
page-longest-piece = pieza más larga { $piece }
page-finding-on = { $finding } · árbol { $tag }
page-anchor-on = Anclaje { $anchor } · árbol { $tag }
page-margin = { $central } ({ $low } a { $high })
page-score = { $points } de 100, entre { $low } y { $high }
page-score-one = { $points } de 100
page-score-range = Las lecturas dudosas se sortearon de nuevo mil veces: 8 de cada 10 veces la puntuación cae en este intervalo. El dictamen se apoya en su extremo bajo.
page-score-one-value = Las lecturas dudosas se sortearon de nuevo mil veces, y 8 de cada 10 veces la puntuación salió igual. No por eso es exacta: lo que nadie miró no está en ella.
page-score-one-value-full = Las lecturas dudosas se sortearon de nuevo mil veces, y 8 de cada 10 veces la puntuación salió igual: el anclaje y el fuste aguantan tanto que más resistencia no da más puntos. No por eso es exacta: lo que nadie miró no está en ella.
page-score-what = La puntuación pondera la resistencia, los hallazgos y lo que no se pudo ver, según las reglas de la casa. No es una nota del árbol, ni una probabilidad, ni permiso para trepar.
page-points-lost = Se pierden { $points }, por causa:
page-takes-about = Lleva unos { $cost }.
page-signed-by = Firmada por { $by }, { $at }.
page-signed-same = Ahora sigue igual.
page-signed-changed = Ha cambiado desde entonces:
page-signed-verdict = El dictamen era «{ $then }»; ahora es «{ $now }».
page-signed-ended = Lo firmado acabó con el { $day }.
page-signed-new = Nuevo: { $what }
page-signed-gone = Ya no: { $what }
page-signed-values = Distancias, márgenes o puntuación son otros ahora.
page-signed-unread = Lo firmado es de una versión más nueva de esta aplicación, que puede mostrarlo.
page-may-climb-and-rescue = puede trepar aquí y puede estar de segunda persona
page-may-climb = puede trepar aquí
page-may-rescue = no puede trepar aquí; puede estar de segunda persona
page-may-not = no puede trepar aquí
page-days = { $count } días
page-hours = { $count } horas
page-minutes = { $count ->
    [one] un minuto
   *[other] { $count } minutos
}
page-add-people-first = Todavía no hay nadie en la cuadrilla. Antes hay que añadir personas, desde el cuaderno de campo.
page-name-holder = Quién lleva este teléfono
page-note-permission = Permiso: { $permission }
page-wire-touching = el árbol la toca
page-wire-from-crown = a { $distance } de la copa
page-start-visit-first = Antes hay que empezar la visita de hoy.
page-start-inspection-first = Empezar con la primera revisión o la revisión completa.
page-look-again-first = Antes hay que decir cómo se vio.
page-add-line-first = Antes hay que anotar la línea aérea.
page-add-target-first = Antes hay que anotar la diana.
page-add-anchor-first = Antes hay que anotar un anclaje.
page-plan-climb-first = Aún no hay plan de trepa. Planear la trepa en la página del árbol; después se dice aquí dónde cayó la línea.
page-add-tree-first = Antes hay que anotar un árbol.
page-standing-value = { $tree } { $what }: { $value } ({ $by })
page-removed-but-changed = { $removed } quitó un registro ({ $noun }) que { $changed } cambió.
rule-set-us = Estados Unidos
language-english = English
language-spanish = Español
report-for-mail = para correo: fotos pequeñas
report-for-print = para imprimir: fotos nítidas
unit-system-metric = metros y kilogramos
unit-system-imperial = pies y libras
theme-follow-phone = como el teléfono
theme-light = claros
theme-dark = oscuros
theme-bright-sun = para pleno sol
noun-value = valor
noun-record = registro

# What a person is told first.
notice-repaired = Este cuaderno de campo estaba dañado. Se puso en su lugar una copia buena del { $day } y se salvaron { $saved } cambios posteriores. Repasar lo anotado desde entonces. Los archivos dañados se guardan: “{ offer-damage-write }” los entrega a quien pueda repararlos.
notice-repaired-without-backup = Este cuaderno de campo estaba dañado y no había ninguna copia buena. Se salvaron { $saved } cambios; el resto falta. No se ha borrado nada: “{ offer-damage-write }” entrega los archivos dañados a quien pueda repararlos.
notice-upgraded = Este cuaderno de campo se pasó a esta versión. Se guarda una copia del anterior.
notice-clock-ahead = El teléfono “{ $device }” tiene la fecha o la hora adelantada { $lead } respecto a este. Comprobar el reloj de los dos.
notice-photos-missing = { $count ->
    [one] Una foto que nombran los registros no está en este teléfono. Pedir un paquete nuevo al teléfono que la hizo.
   *[other] { $count } fotos que nombran los registros no están en este teléfono. Pedir un paquete nuevo al teléfono que las hizo.
}
notice-standing = { $count ->
    [one] Un valor se anotó de dos maneras. Hasta que alguien decida, cuenta el dictamen más bajo.
   *[other] { $count } valores se anotaron de dos maneras. Hasta que alguien decida, cuenta el dictamen más bajo.
}
notice-removed-but-changed = { $count ->
    [one] Alguien quitó algo que otra persona cambió sin saberlo. Decidir si se queda.
   *[other] Alguien quitó { $count } cosas que otra persona cambió sin saberlo. Decidir de cada una si se queda.
}
notice-unread = { $count ->
    [one] Un valor lo anotó una versión más nueva y aquí no se puede leer. Se guarda, y cuenta como dato que falta. Actualizar esta aplicación.
   *[other] { $count } valores los anotó una versión más nueva y aquí no se pueden leer. Se guardan, y cuentan como datos que faltan. Actualizar esta aplicación.
}
gap-standing-values = Anotado de dos maneras: { $count } veces. Decidir cuál vale.
gap-unread-value = Lo anotó una versión más nueva y aquí no se puede leer: { $noun }. Actualizar esta aplicación.

# What is still missing while a measure is taken: `rehearse.<input>`.
rehearse-height-distance = ¿A qué distancia está el árbol? Con cinta o a pasos, a nivel.
rehearse-height-up = Apuntar a la punta.
rehearse-height-down = Apuntar a la base.
rehearse-height-near = Apuntar a la punta desde el punto cercano.
rehearse-height-far = Retroceder en línea recta y apuntar otra vez a la punta.
rehearse-height-apart = ¿Cuánto se ha retrocedido?
rehearse-lean-along = Poner el teléfono a lo largo del fuste, desde el primer lado.
rehearse-lean-across = Dar un cuarto de vuelta al árbol y ponerlo otra vez a lo largo del fuste.
rehearse-lean-along_toward = ¿Hacia dónde se inclinaba la primera lectura?
rehearse-tree-girth = Pasar la cinta alrededor del fuste.
rehearse-tree-lean = ¿Derecho, o cuánto se inclina?
rehearse-tree-position = Ponerse junto al fuste y esperar la posición.

# What was done: `done.<verb>`.
done-add = Añadido.
done-change = Cambiado.
done-remove = Quitado. Deshacer lo recupera.
done-undo = Deshecho.
done-redo = Rehecho.
done-settle = Decidido.
done-keep = Conservado.
done-write = Escrito.
done-start = Empezado.
done-on_sight = Prohibido trepar. Deshacer lo revierte.
done-same = Anotado.
done-note = Anotado.
done-record = Guardado.
done-height_by_angles = Altura guardada.
done-height_from_two_positions = Altura guardada.
done-lean_from_two_sides = Inclinación guardada.
done-lean_by_eye = Inclinación guardada.
done-girth = Perímetro guardado.
done-look = Anotado.
done-measure = Medido.
done-grade = Grado puesto.
done-clear = Dado por bueno.
done-check = Revisado.
done-put_out = Fuera de uso.
done-bring_back = De nuevo en uso.
done-retire = Retirado. Se puede recuperar.
done-move_up = Subido.
done-move_down = Bajado.
done-reset = Como viene de origen.
done-set = Puesto.
done-sound = Guardado.
done-read = Guardado.
done-test = Guardado.
done-add_limb = Añadido.
done-find = Añadido.
done-land = El plan pasa ahora por este anclaje.
done-shock = Fuera de uso. Deshacer lo devuelve.
done-finish = Hecho.
done-leave = Anotado para el cliente.
done-forget_limbs = Ramas quitadas.
done-sign = Firmado.
done-import = Incorporado.
done-ground = { $count ->
    [one] Se trajo una diana. Decir qué es y con qué frecuencia hay alguien.
   *[other] Se trajeron { $count } dianas. Decir qué son y con qué frecuencia hay alguien.
}
done-ground-with-edge = { $count ->
    [0] Se trajo el borde de la propiedad.
    [one] Se trajeron el borde de la propiedad y una diana.
   *[other] Se trajeron el borde de la propiedad y { $count } dianas.
}
done-backup = Copiado.
pack-written = Empaquetado: { $changes ->
    [one] una anotación
   *[other] { $changes } anotaciones
}, { $photos ->
    [0] sin fotos
    [one] una foto
   *[other] { $photos } fotos
}. Enviar el archivo al otro teléfono e incorporarlo allí.
pack-photos-left-out = { $count ->
    [one] Una foto no va dentro: aquí falta o está dañada, o no había sitio.
   *[other] { $count } fotos no van dentro: aquí faltan o están dañadas, o no había sitio.
}
pack-taken = Incorporado: { $changes ->
    [0] ninguna anotación nueva
    [one] una anotación nueva
   *[other] { $changes } anotaciones nuevas
}, { $photos ->
    [0] ninguna foto nueva
    [one] una foto nueva
   *[other] { $photos } fotos nuevas
}.
pack-nothing-new = Nada nuevo: todo lo de este paquete ya estaba aquí.

# A pack that was written, and one that was taken in.

# Headings of the lists of a page: `list.<page>.<list>`, else `list.<list>`; and, while a list holds
# nothing, what it is for and what to do first: `….empty`.
list-notices = Saber antes de nada
list-unsettled = Por resolver
list-stops = Lo que impide trepar
list-gaps = Falta comprobar
list-cautions = Vale siempre
list-ways = Más páginas
list-offers = Qué se puede hacer
list-book-lines = Este teléfono
list-book-sites = Propiedades
list-book-health = Estado del cuaderno
list-settings-lines = Ajustes actuales
list-codebook-codes = Códigos en uso
list-codebook-codes-empty = No hay ningún código en uso. Recuperar uno o añadirlo: todo hallazgo lleva un código.
list-codebook-retired = Códigos retirados
list-rule_set-groups = Reglas por tema
list-people-people = Cuadrilla
list-person-lines = Sobre esta persona
list-person-skills = Destrezas, en el orden de la formación
list-person-knots = Nudos, según su uso
list-person-climbs = Trepas
list-person-climbs-empty = Aún no hay ninguna trepa anotada. Anotar cada una al acabar, con la persona que estuvo cerca.
list-gear-pieces = Equipo; primero, lo que no se debe usar
list-site-visit = Visita de hoy
list-site-lines = La propiedad
list-site-trees = Árboles en el orden de paso
list-site-to_close = Qué cerrar, retirar o vigilar
list-site-to_close-empty = Nada todavía. Sale de la forma de trabajo y la posición de cada árbol, y de las dianas.
list-site-conflicts = No a la vez
list-site-targets = Dianas
list-site-targets-empty = Aún no hay dianas. Añadir lo que podría recibir un golpe: casas, carreteras, caminos, jardines. De ahí sale qué cerrar y a quién apartar.
list-site-overhead_lines = Líneas aéreas
list-site-overhead_lines-empty = No hay ninguna línea aérea anotada. Buscar primero los cables desde lejos; anotar cada línea con su tensión, o que no se conoce.
list-site-permissions = Permisos
list-site-permissions-empty = Aún no se ha preguntado nada. Preguntar por el consentimiento del dueño, árboles protegidos, nidos y murciélagos antes de empezar.
list-tree-doors = Por dónde empezar
list-tree-again = Por revisar de nuevo hoy
list-tree-lines = Lo que se sabe de este árbol
list-tree-ways_of_working = Forma de trabajo
list-tree-wires = Distancias a cables
list-tree-walk_round = Vuelta al árbol
list-tree-findings = Hallazgos
list-tree-findings-empty = Aún no hay hallazgos. Añadir cada defecto donde se ve. Una parte que nadie ha mirado no está sana: queda por comprobar.
list-tree-sections = Secciones del fuste
list-tree-sections-empty = Aún no hay secciones. Medir una donde el fuste suene sordo o hueco, o tenga una abertura.
list-tree-anchors = Anclajes
list-tree-anchors-empty = Aún no hay anclajes. Anotar aquel al que se va a anclar: su altura, su diámetro y cómo se leyó.
list-tree-plans = Planes de trepa
list-tree-plans-empty = Aún no hay plan de trepa. Con un anclaje anotado, elegir sistema de cuerda, quién trepa y la segunda persona.
list-tree-photos-empty = Aún no hay fotos. Hacer una del árbol entero y una de cada hallazgo.
list-tree-photos = Fotos
list-tree-work = Trabajo
list-tree-work-empty = Aún no hay trabajo. Decir qué hay que hacer: el tamaño de las piezas decide a qué distancia se queda la gente.
list-tree-notes = Notas
list-tree-risks = Riesgo para el cliente
list-tree-risks-empty = Sin valorar. Puede anotarlo una persona evaluadora con su nombre y un plazo; nunca sale de la puntuación.
list-tree-history = Todas las revisiones de este árbol
list-tree-history-empty = Nadie ha mirado aún este árbol. Empezar por un impedimento a simple vista, la primera revisión o la revisión completa.
list-finding-lines = Dónde está
list-finding-grades = Grado
list-finding-grades-empty = Este código no tiene grados que elegir. Escribir sus frases en el libro de códigos.
list-finding-photos = Fotos del hallazgo
list-finding-photos-empty = Aún no hay fotos. Una de cerca y otra que muestre dónde está ayudan a quien mire después.
list-stem_section-lines = Tamaño de la sección
list-stem_section-clock = Reloj del mazo
list-stem_section-readings = Lecturas de la pared sana
list-stem_section-readings-empty = Aún no hay lecturas. Leer la pared por varios lados, primero donde peor suena.
list-anchor-lines = Lecturas
list-anchor-margins = Márgenes
list-anchor-margins-empty = No hay margen calculado: la valoración no se apoya en este anclaje, o falta una lectura.
list-anchor-reasons = Lo que hay en la valoración sobre este anclaje
list-aloft-plans = Planes de trepa
list-aloft-plans-empty = Aún no hay plan de trepa. Anotarlo en la página del árbol antes de que nadie deje el suelo.
list-aloft-found = Hallado arriba
list-aloft-found-empty = Nada todavía. Anotar al momento lo que se halle, con su grado: puede parar la trepa.
list-aloft-near_misses = Casi accidentes
list-aloft-near_misses-empty = Ninguno anotado. Solo los lee la cuadrilla, y ayudan a quien trepe después.
list-aloft-hangers = Ramas colgadas que siguen arriba
list-aloft-gear = Equipo para esta trepa
list-aloft-gear-empty = No hay equipo anotado en uso. Anotar el equipo de la cuadrilla, para poder retirar una pieza cargada por un golpe.
list-aloft-other_gear = Otro equipo
page-other-gear = { $count ->
    [one] Otra pieza de equipo
   *[other] Otras { $count } piezas de equipo
}
list-aloft-work = Trabajo
list-aloft-work-empty = No hay trabajo anotado para este árbol. Anotarlo en la página del árbol, para decir después qué no se hizo.
list-judgement-refer_caps = Otra forma, o una segunda opinión
list-judgement-limits = Solo dentro de estos límites
list-judgement-remarks = Conviene saber también
list-judgement-score = Puntuación, con el intervalo en que caen 8 de cada 10
list-judgement-score-empty = No hay puntuación mientras falte algo o algo impida trepar.
list-judgement-next_measurement = La mejor medida que sigue
list-judgement-signed = Firma
list-judgement-signed-empty = Nadie ha firmado todavía. Al firmar, esta valoración se guarda como está ahora, con nombre y hora.
list-judgement-climbers = Quién puede trepar
list-judgement-climbers-empty = Aún no hay nadie en la cuadrilla. Añadir personas y confirmar sus destrezas: de ahí sale quién puede trepar.
list-judgement-lines = Cuerda, cables y próxima revisión
list-judgement-zones = Zona de caída y distancia de seguridad
list-judgement-zones-empty = Aún no hay zona. Sale de la altura, la inclinación, la copa y la forma de trabajar.
list-judgement-margins = Márgenes
list-judgement-margins-empty = Aún no hay margen. Hacen falta especie, perímetro y un anclaje con su diámetro.
list-judgement-working = El cálculo, línea a línea
list-compare-lines = Entonces y ahora
list-compare-findings = Hallazgos, entonces y ahora
list-hand_over-lines = Estado de los árboles
list-hand_over-cautions = Impreso en todos los papeles

# The words of the shell itself: `shell.<name>`. Numbers are put in by the shell.
shell-opening = Abriendo el cuaderno de campo
shell-go_up = Subir
shell-go_book = Cuaderno de campo
shell-go_rules = Reglas
shell-go_hand_over = Entrega
shell-go_aloft = En la cuerda y después
shell-go_compare = Junto a la visita anterior
shell-go_on = Continuar
shell-close = Cerrar
shell-keep = Guardar
shell-clear = Vaciar
shell-draft_kept = Lo anotado antes sigue aquí. Todavía no está guardado.
shell-start_anew = Empezar de nuevo
shell-answer_yes = Sí
shell-answer_no = No
shell-less = Menos
shell-more = Más
shell-larger = Ampliar
shell-smaller = Reducir
shell-needed = obligatorio
shell-chosen = elegido
shell-search = Buscar
shell-search_list = Buscar en la lista
shell-take_photo = Hacer una foto
shell-choose_photo = Elegir una imagen
shell-photo_ready = La foto está lista para guardarla.
shell-camera_wanted = La cámara hace fotos y apunta a la base y a la cima del árbol. Nada sale de este teléfono.
shell-camera_refused = Esta aplicación no puede usar la cámara. Permitirlo en los ajustes del sistema, o elegir una imagen.
shell-choose_file = Elegir un archivo
shell-not_readable = No se pudo leer. Elegir otro archivo.
shell-too_large = El archivo es demasiado grande para este teléfono. Elegir otro.
shell-take_position = Tomar mi posición
shell-stop_position = Parar aquí
shell-position_wanted = La posición de este teléfono sirve para situar árboles y dianas. No sale del teléfono.
shell-position_refused = Este teléfono no deja leer su posición. Permitirlo en los ajustes del sistema, o seguir sin ella.
shell-position_off = La ubicación está apagada en este teléfono. Encenderla, o seguir sin ella.
shell-position_waiting = Esperando la posición a cielo abierto
shell-hold_still = Sin mover el teléfono
shell-take_bearing = Apuntar con el teléfono y tomar el rumbo
shell-aim = Apuntar con la cámara
shell-take_sight = Apuntar con el teléfono y tomar el ángulo
shell-take_lean = Poner la línea vertical sobre el fuste y tomar el ángulo
shell-take_tilt = Apoyar el borde largo del teléfono a lo largo y tomar el ángulo
shell-degrees = { $degrees }°
shell-sight_picture = Imagen en vivo de la cámara con una cruz
shell-sight_refused = Esta aplicación no puede usar la cámara. Apuntar con el borde del teléfono, o escribir el ángulo.
shell-sight_off = La cámara está apagada, o la usa otra aplicación. Apuntar con el borde del teléfono, o escribir el ángulo.
shell-sight_lacking = Este teléfono no tiene cámara trasera. Apuntar con el borde del teléfono, o escribir el ángulo.
shell-no_camera_app = Ninguna aplicación de cámara responde en este teléfono. Elegir una imagen.
shell-no_room = El teléfono está lleno. Hacer sitio y volver a intentarlo. No se ha perdido nada.
shell-open_settings = Abrir los ajustes
shell-not_handed = Ese archivo no lo entregó otra aplicación, así que no se lee.
shell-handed_title = ¿Incorporar este archivo al cuaderno de campo?
shell-handed_what = Lo entregó otra aplicación. Antes se comprueba lo que contiene. Incorporarlo solo si se sabe de quién viene.
shell-handed_take = Incorporarlo
shell-handed_leave = Dejarlo
shell-no_sensor = Este teléfono no tiene sensor para eso. Escribirlo.
shell-add_corner = Añadir un vértice donde estoy
shell-tap_plan = Tocarlo en el plano
shell-close_plan = Cerrar el plano
shell-plan_wanted = Tocar el lugar en el plano. Cuanto más grande el plano, mejor se conoce el lugar.
shell-drop_corner = Quitar el último vértice
shell-corners = Vértices: { $count }
shell-corners_least = Al menos { $count }
shell-pick_day = Elegir el día
shell-busy = Un momento, sigue trabajando.
shell-working = Trabajando: paso { $done } de { $of }
shell-stop_work = Parar
shell-written = Escrito.
shell-open_file = Abrir
shell-share = Compartir
shell-no_app = Ninguna aplicación de este teléfono lo admite.
shell-photo = Foto
shell-drawing = Dibujo
shell-photo_large = Ver en grande
shell-refused_marked = Aún no está guardado. Por corregir: { $count }
shell-legend = Qué significan los signos

# What a button says: `offer.<id of the command>`.
offer-settings-change = Cambiar los ajustes
offer-edit-undo = Deshacer
offer-edit-redo = Rehacer
edit-undo-what = Deshacer: { $what }
edit-redo-what = Rehacer: { $what }
edit-value-of-tree = { $what } del árbol { $name }
edit-value-of = { $what } de { $name }
edit-step-at-tree = { $what }, árbol { $name }
edit-step-at = { $what }, { $name }
edit-step-value-settle = Qué valor vale
edit-step-removed-keep = Conservar lo quitado
edit-step-removed-remove = Quitar de nuevo
edit-step-code-move_up = Orden de los códigos
edit-step-code-move_down = Orden de los códigos
edit-step-finding-grade = Grado
edit-step-finding-clear = Hallazgo dado por bueno
edit-step-gear-check = Revisión de equipo
edit-step-gear-shock = Tirón de choque
edit-step-weather-note = Tiempo
edit-step-weather-same = Tiempo
edit-step-work-finish = Trabajo hecho
edit-step-work-leave = Trabajo sin hacer
offer-value-settle = Vale este
offer-removed-keep = Conservarlo
offer-removed-remove = Quitarlo
offer-code-add = Añadir un código
offer-code-change = Cambiar el código
offer-code-retire = Retirar el código
offer-code-bring_back = Recuperar el código
offer-code-move_up = Subir
offer-code-move_down = Bajar
offer-house_value-set = Poner un valor propio
offer-house_value-reset = Volver al valor de origen
offer-person-add = Añadir una persona
offer-person-change = Cambiar la persona
offer-person-remove = Quitar la persona
offer-sign_off-add = Dar una habilitación
offer-sign_off-remove = Quitar la habilitación
offer-climb_log-add = Anotar una trepa
offer-climb_log-change = Cambiar la anotación
offer-climb_log-remove = Quitar la anotación
offer-gear-add = Añadir equipo
offer-gear-change = Cambiar el equipo
offer-gear-check = Revisado hoy
offer-gear-put_out = Poner fuera de uso
offer-gear-bring_back = Volver a usar
offer-gear-remove = Quitar el equipo
offer-site-add = Añadir una propiedad
offer-site-change = Cambiar la propiedad
offer-site-remove = Quitar la propiedad
offer-rescue-write = Plan de rescate
offer-target-add = Añadir una diana
offer-target-change = Cambiar la diana
offer-target-remove = Quitar la diana
offer-ground-import = Borde y dianas de un archivo de mapa
offer-line-add = Añadir una línea aérea
offer-line-change = Cambiar la línea
offer-line-remove = Quitar la línea
offer-permission-add = Añadir un permiso
offer-permission-change = Cambiar el permiso
offer-permission-remove = Quitar el permiso
offer-visit-start = Visita de hoy
offer-weather-note = Tiempo ahora
offer-weather-same = El tiempo sigue igual
offer-tree-add = Añadir un árbol
offer-tree-change = Cambiar el árbol
offer-tree-remove = Quitar el árbol
offer-stop-on_sight = Impedimento a la vista
offer-triage-record = Primera revisión
offer-full_check-start = Revisión completa
offer-full_check-record = Medidas de la revisión completa
offer-again-look = Mirar otra vez
offer-work-add = Añadir un trabajo
offer-work-change = Cambiar el trabajo
offer-work-remove = Quitar el trabajo
offer-inspection-start = Empezar una inspección
offer-inspection-record = Medidas
offer-inspection-height_by_angles = Altura por dos ángulos
offer-inspection-height_from_two_positions = Altura desde dos puntos
offer-inspection-lean_from_two_sides = Inclinación desde dos lados
offer-inspection-lean_by_eye = Inclinación a ojo
offer-inspection-girth = Perímetro
offer-walk-look = Mirar una parte
offer-wire-remove = Quitar la distancia
offer-wire-measure = Distancia a un cable
offer-inspection-remove = Quitar la inspección
offer-finding-add = Añadir un hallazgo
offer-finding-change = Cambiar el hallazgo
offer-finding-grade = Darle un grado
offer-finding-clear = Darlo por bueno, con nombre
offer-finding-remove = Quitar el hallazgo
offer-section-add = Añadir una sección del fuste
offer-section-change = Cambiar la sección
offer-section-sound = Golpearla con el mazo
offer-section-read = Leer la pared
offer-reading-remove = Quitar la lectura
offer-section-remove = Quitar la sección
offer-anchor-add = Añadir un anclaje
offer-anchor-change = Cambiar el anclaje
offer-anchor-test = Prueba de carga
offer-anchor-remove = Quitar el anclaje
offer-climb-add = Planear la trepa
offer-climb-change = Cambiar el plan
offer-climb-add_limb = Añadir una rama por alcanzar
offer-climb-forget_limbs = Quitar las ramas
offer-climb-remove = Quitar el plan
offer-aloft-find = Hallado arriba
offer-aloft-land = La línea cayó en otro sitio
offer-near_miss-note = Casi accidente
offer-near_miss-remove = Quitar el casi accidente
offer-gear-shock = Sufrió un tirón: fuera de uso
offer-work-finish = Hecho
offer-work-leave = Sin hacer, y por qué
offer-next_look-set = Próxima revisión
offer-photo-add = Añadir una foto
offer-photo-change = Cambiar la foto
offer-photo-remove = Quitar la foto
offer-risk-add = Anotar una evaluación de riesgo
offer-risk-remove = Quitar la evaluación
offer-judgement-sign = Firmar esta valoración
offer-site_summary-write = Escribir el resumen de la propiedad
offer-climb_sheets-write = Escribir las hojas de trepa
offer-table-write = Escribir los árboles como tabla (CSV)
offer-geojson-write = Escribir el plano como GeoJSON
offer-geopackage-write = Escribir el plano como GeoPackage
offer-pack-write = Escribir un paquete para otro teléfono
offer-pack-read = Incorporar un paquete de otro teléfono
offer-site_file-import = Incorporar un archivo de propiedad
offer-book-backup = Hacer una copia de seguridad
offer-damage-write = Compartir los archivos dañados

# Labels of inputs: `input.<id of the input>`.
input-settings-units = Unidades
input-settings-language = Idioma
input-settings-theme = Colores
input-settings-text_size = Tamaño de letra
input-settings-left_hand = Para la mano izquierda
input-code-name = Nombre
input-code-kind = Qué significa
input-code-parts = Dónde puede estar
input-code-grade_1 = El grado 1 se ve así
input-code-grade_2 = El grado 2 se ve así
input-code-grade_3 = El grado 3 se ve así
input-code-stops_from = Prohíbe trepar desde
input-house_value-value = Valor
input-house_value-by = Lo decide
input-house_value-why = Porque
input-settings-person = Quién lleva este teléfono
input-person-name = Nombre
input-person-trainee = En formación
input-person-mass = Masa con equipo
input-person-height_limit = Límite de altura
input-person-throw = Lanza una línea hasta
input-person-electrical = Cerca de electricidad
input-sign_off-skill = Destreza
input-sign_off-knot = Qué nudo
input-sign_off-by = Lo confirma
input-sign_off-on = El día
input-sign_off-until = Hasta el
input-sign_off-seconds = Tiempo que tardó
input-climb_log-on = El día
input-climb_log-place = Propiedad y árbol
input-climb_log-height = Altura alcanzada
input-climb_log-system = Sistema de cuerda
input-climb_log-with_whom = Con quién
input-climb_log-note = Nota
input-gear-name = Nombre o marca
input-gear-kind = Qué es
input-gear-rating = Carga nominal
input-gear-diameter = Diámetro
input-gear-length = Longitud
input-gear-first_use = Primer uso
input-gear-last_check = Última revisión
input-gear-next_check = Próxima revisión
input-gear-out_of_use = Fuera de uso, porque
input-gear-shock_loaded = Sufrió un tirón de choque
input-gear-double_locking = Cierre automático con doble seguro
input-gear-chin_strap = Con barboquejo
input-gear-used_by = Lo usa
input-site-name = Nombre de la propiedad
input-site-client = Cliente
input-site-address = Dirección o indicaciones
input-site-rule_set = Reglas
input-site-outline = Borde de la propiedad
input-site-note = Notas
input-rescue-meeting_point = Rescate: dónde esperar a la ambulancia
input-rescue-grid_reference = Coordenadas que se dictan
input-rescue-signal = Cobertura de teléfono
input-rescue-first_aider = Socorrista
input-rescue-casualty_unit = Urgencias más cercanas
input-target-name = Nombre
input-target-kind = Qué es
input-target-occupancy = Cada cuánto hay alguien
input-target-can_be_moved = Se puede retirar
input-target-can_be_closed = Se puede cerrar
input-target-neighbours = Es de un vecino
input-target-form = Forma en el suelo
input-target-ground = Lugar en el suelo
input-target-here = Estoy junto a ella
input-line-name = Nombre
input-line-kind = Qué es
input-line-voltage = Tensión
input-line-voltage_between = Medida
input-line-height = Cable más bajo sobre el suelo
input-line-owner_told = Se avisó al titular el
input-line-dead_on = Sin tensión confirmada para el
input-line-way = Su trazado sobre el suelo
input-permission-kind = Qué se pidió
input-permission-answer = Respuesta
input-permission-on = El día
input-permission-tree = Para un árbol
input-permission-note = Condiciones
input-visit-crew = Quién está
input-visit-note = Notas
input-weather-hour = Hora
input-weather-wind_force = Viento, por sus señales
input-weather-wind = Viento, medido
input-weather-no_thunder = Se escuchó: sin truenos
input-weather-thunder_ago = Último trueno, hace minutos
input-weather-ice = Hielo o nieve
input-weather-wet_bark = Corteza mojada
input-weather-light = Luz
input-weather-temperature = Temperatura
input-weather-humidity = Humedad
input-tree-tag = Etiqueta
input-tree-species = Especie
input-tree-position = Posición
input-tree-way = Forma de trabajo
input-tree-other_access = ¿Se podría hacer sin trepar?
input-tree-walk_order = Lugar en la vuelta
input-tree-note = Notas
input-work-operation = Trabajo
input-work-priority = Para cuándo
input-work-piece_length = Pieza más larga
input-work-piece_mass = Pieza más pesada
input-work-cut_height = Corte más alto
input-work-chainsaw_aloft = Motosierra en altura
input-work-note = En palabras del cliente
input-inspection-level = Cuán a fondo
input-tree-life = Vivo, moribundo o muerto
input-tree-dead_since = Muerto desde
input-tree-beetle_killed = Lo mató el escarabajo
input-tree-dieback = Copa en regresión
input-tree-wires_near = Cables cerca
input-tree-base_sound = Base y raíces parecen sanas
input-tree-height = Altura
input-tree-height_method = Cómo se tomó la altura
input-tree-height_se = La altura puede fallar en
input-tree-girth = Perímetro
input-tree-girth_method = Cómo se tomó el perímetro
input-tree-girth_at = Cinta a
input-tree-bark = Corteza
input-tree-lean = Inclinación
input-tree-lean_toward = Se inclina hacia
input-tree-lean_method = Cómo se tomó la inclinación
input-tree-lean_is_new = La inclinación es nueva
input-tree-crown_radius = Copa, alcance mayor
input-tree-crown_base = La copa arranca a
input-tree-slope = Pendiente del terreno
input-tree-downhill = Cuesta abajo hacia
input-tree-ground_dug = Suelo excavado o raíces cortadas
input-tree-dug_when = Cuándo se excavó
input-tree-dug_distance = Lo más cerca del fuste
input-tree-dug_cleared_by = Raíces examinadas por
input-tree-base_north = Mazo en la base, norte
input-tree-base_east = Mazo en la base, este
input-tree-base_south = Mazo en la base, sur
input-tree-base_west = Mazo en la base, oeste
input-inspection-note = Notas
input-inspection-next_look = Próxima revisión
input-height-distance = Distancia horizontal
input-height-up = Ángulo a la punta
input-height-down = Ángulo a la base
input-height-distance_by = Distancia con
input-height-near = Ángulo a la punta, desde cerca
input-height-far = Ángulo a la punta, desde lejos
input-height-apart = De un punto al otro
input-lean-upright = Derecho, a ojo
input-lean-along = Inclinación vista desde el primer lado
input-lean-along_toward = Hacia
input-lean-across = Inclinación vista un cuarto de vuelta a la derecha
input-walk-part = Parte
input-walk-look = ¿Visto?
input-walk-hidden_by = Lo tapa
input-wire-line = Línea
input-wire-distance = Distancia desde la copa
input-wire-touching = El árbol la toca
input-finding-code = Qué
input-finding-part = En qué parte del árbol
input-finding-grade = Grado
input-finding-height = Altura
input-finding-side = Lado
input-finding-anchor = En la rama del anclaje
input-finding-aspect_ratio = Rama entre fuste, relación
input-finding-cleared_by = Lo da por bueno
input-finding-cleared_on = Dado por bueno el
input-finding-note = Notas
input-on_sight-what = Qué lo impide
input-triage-size = Qué altura
input-section-height = Altura
input-section-girth = Perímetro ahí
input-section-diameter = Diámetro ahí
input-section-bark = Corteza
input-section-opening_side = Abertura, lado
input-section-opening_width = Abertura, ancho sobre la corteza
input-section-note = Notas
input-sound-north = Norte
input-sound-northeast = Noreste
input-sound-east = Este
input-sound-southeast = Sureste
input-sound-south = Sur
input-sound-southwest = Suroeste
input-sound-west = Oeste
input-sound-northwest = Noroeste
input-reading-bearing = Lado
input-reading-shell = Pared sana
input-reading-method = Cómo se leyó
input-reading-se = Puede fallar en
input-reading-drill_angle = Taladro fuera del radio
input-anchor-name = Nombre
input-anchor-height = Altura
input-anchor-height_se = La altura puede fallar en
input-anchor-diameter = Diámetro en la unión
input-anchor-diameter_read = Cómo se leyó
input-anchor-parent_diameter = Fuste en la unión
input-anchor-from_union = Cuerda desde la unión
input-anchor-limb_angle = Rama desde la vertical
input-anchor-limb_bearing = La rama apunta hacia
input-anchor-limb_length = Longitud de la rama
input-anchor-union = Unión
input-anchor-state = Madera
input-anchor-note = Notas
input-load_test-outcome = Prueba de carga
input-load_test-mass = Masa en la cuerda
input-load_test-on = El día
input-load_test-by = La observó
input-climb-anchor = Anclaje
input-climb-system = Sistema de cuerda
input-climb-ascent_side = Lado de la subida
input-climb-climber = Quién trepa
input-climb-second = Segunda persona
input-climb-spurs = Con espuelas
input-climb-open_system = Sistema abierto
input-climb-stopper = Nudo de tope hecho
input-limb-bearing = Lado
input-limb-height = Altura
input-near_miss-what = Qué estuvo a punto de pasar
input-work-done = Hasta dónde
input-work-why = Por qué
input-work-left = Qué queda, para el cliente
input-photo-file = Foto
input-photo-caption = Qué muestra
input-photo-finding = Hallazgo que muestra
input-site_summary-language = Idioma del resumen
input-site_summary-photos = Para qué es
input-climb_sheets-language = Idioma de las hojas
input-risk-target = Diana
input-risk-part = Parte que podría fallar
input-risk-assessor = Lo evalúa
input-risk-level = Nivel
input-risk-time_frame = Vale durante
input-risk-failure = Probabilidad de fallo
input-risk-impact = Probabilidad de impacto
input-risk-consequences = Consecuencias

# Why something other than a number is asked: `<id of the input>.why`.
settings-person-why = Cada cambio lleva el nombre de quien lo hizo.
settings-theme-why = Los colores para pleno sol tienen el mayor contraste.
settings-left_hand-why = Los botones quedan entonces bajo el pulgar izquierdo.
code-kind-why = La valoración va por lo que significa un código, no por su nombre.
code-stops_from-why = Los impedimentos del método valen además.
house_value-by-why = Un valor propio es decisión de alguien: con nombre y día.
person-electrical-why = Sin cualificación anotada valen las distancias para todos.
climb_log-with_whom-why = Alguien habilitado se queda al alcance de quien está en formación.
gear-out_of_use-why = Quien la encuentre tiene que saber por qué no se debe usar.
site-client-why = El resumen va a nombre del cliente.
site-address-why = La cuadrilla, y una ambulancia, tienen que dar con el lugar.
site-rule_set-why = Las distancias y los límites salen de las reglas de la región.
site-outline-why = La zona a despejar puede pasar del borde; entonces hay que hablar con el vecino.
rescue-meeting_point-why = Nadie trepa sin plan de rescate.
target-occupancy-why = De cada cuánto hay alguien sale si un lugar se cierra o se vigila.
line-dead_on-why = Solo el titular de una línea puede decir que está sin tensión, y para qué día.
permission-answer-why = Lo que nadie preguntó cuenta como no concedido.
visit-crew-why = De quién está sale quién puede trepar y quién está preparado.
weather-no_thunder-why = Nadie está en un árbol hasta que el trueno lleva callado lo suficiente.
weather-ice-why = Sobre hielo no agarran ni el pie ni la cuerda.
weather-wet_bark-why = Sobre corteza mojada resbalan los pies y corren los nudos.
weather-light-why = De noche no trepa nadie.
tree-tag-why = El número en el árbol o en el plano; cada árbol tiene el suyo.
tree-species-why = La resistencia y el peso de la madera salen de la especie. Para empezar basta el género.
tree-position-why = Sin posición, el plano no puede mostrar el árbol ni lo que tiene cerca.
tree-way-why = De la forma de trabajo salen la distancia de seguridad y quién puede hacerlo.
tree-other_access-why = Nadie tiene que trepar a un árbol que se puede trabajar de otra forma.
tree-walk_order-why = Los árboles van en el orden en que la cuadrilla los recorre.
tree-life-why = La madera muerta rompe sin doblarse antes.
tree-wires_near-why = Los cables matan. Van primero.
tree-base_sound-why = Lo que esconde la base sostiene todo el árbol.
tree-lean_is_new-why = Una inclinación nueva significa que las raíces están cediendo.
tree-ground_dug-why = Un árbol con las raíces cortadas puede seguir teniendo buen aspecto.
tree-base_north-why = Un sonido sordo o hueco habla de pudrición que el ojo no ve.
height-distance_m-why = Del ojo a la plomada de la punta, en horizontal.
height-apart_m-why = Los dos puntos en línea con el fuste y a la misma altura.
height-sight_deg-why = La altura sale de los ángulos a la punta y a la base.
height-rise_deg-why = Desde el punto más lejano la punta se ve bajo un ángulo más llano.
lean-seen_deg-why = Desde un solo lado no se ve si se inclina hacia quien mira o al contrario.
finding-part-why = Lo que más cuenta es lo que está en el recorrido o por encima.
finding-grade-why = Sin grado cuenta como lo más grave.
finding-cleared_by-why = Un hallazgo lo da por bueno una persona con nombre que lo haya examinado.
anchor-height-why = De ella salen la longitud de la cuerda, el lanzamiento y el esfuerzo de la rama.
anchor-parent_diameter-why = Una rama casi tan gruesa como su fuste está peor sujeta.
anchor-union-why = La corteza incluida o una grieta quitan mucha resistencia a una unión.
anchor-state-why = Solo sostiene a quien trepa la madera viva que creció así desde el principio.
load_test-outcome-why = El peso de dos personas solo en la cuerda, sin nadie debajo, observando el anclaje.
site_summary-language-why = El cliente puede leer otro idioma que la cuadrilla.
climb_sheets-language-why = Todos los que están al pie del árbol tienen que entenderlas.
near_miss-what-why = Para que la cuadrilla aprenda. No sale en ningún papel del cliente.
work-left-why = El papel del cliente dice lo que no se hizo.
inspection-next_look-why = El papel del cliente dice cuándo conviene volver a mirar.
walk-look-why = Lo que no se miró cuenta como desconocido, nunca como sano.

## Papers: site summary and climb sheets

# Every paper.
paper-page = página { $page } de { $pages }
paper-caution = A tener en cuenta
paper-nothing-noted = nada anotado
paper-and-more = y { $count } más

# Site summary: cover.
summary-title = Resumen de la propiedad
summary-subject = Qué se vio en los árboles de { $site }, qué se propone y qué hay que cerrar mientras se trabaja
summary-foot = No es una garantía: los árboles cambian, y ninguno está libre de riesgo
summary-client = Cliente
summary-address = Dirección
summary-looked-at-on = Revisado el
summary-looked-at-by = Revisado por
summary-tree-count = Árboles
summary-target-count = Lugares con gente
summary-line-count = Líneas aéreas
summary-made-on = Hecho el
summary-lead = { $looked ->
    [0] Todavía no se ha revisado ninguno de los { $trees } árboles de esta propiedad.
    [one] { $trees ->
        [one] El único árbol de esta propiedad se revisó desde el suelo.
       *[other] Uno de los { $trees } árboles de esta propiedad se revisó desde el suelo.
    }
   *[other] { $all ->
        [yes] Los { $trees } árboles de esta propiedad se revisaron desde el suelo.
       *[no] { $looked } de los { $trees } árboles de esta propiedad se revisaron desde el suelo.
    }
  } Aquí se dice qué se vio, qué se propone, y qué cerrar, retirar o vigilar durante el trabajo.
summary-first = Lo primero
summary-first-nothing = Ningún trabajo está marcado como urgente.
summary-contents = En este documento
summary-only-what-was-seen = Dice lo que se podía ver desde el suelo en los días indicados.
summary-until-next-looks = el tiempo hasta la próxima revisión de cada árbol
summary-last-word = La última palabra la tienen la normativa local y el arborista cualificado presente el día del trabajo.

# Site summary: what was looked at.
summary-looked = Qué se revisó
summary-looked-lead = Los árboles se revisaron desde el suelo, dando la vuelta a cada uno. Lo que se midió de otra forma consta en su ficha.
summary-looked-level = Cuán a fondo
summary-looked-count = Árboles
summary-looked-which = Cuáles
summary-looked-table = Cuán a fondo se revisó cada árbol
summary-level-stop-on-sight = Visto de lejos; enseguida se encontró algo evidente
summary-level-triage = Primera revisión: especie, tamaño, base y raíces
summary-level-full-check = Revisión completa, parte por parte
summary-level-same-day = Revisado otra vez el mismo día
summary-level-not-yet = Sin revisar todavía
summary-unseen = Lo que no se pudo ver
summary-unseen-lead = Estas partes estaban tapadas, o no se miraron. De ellas no se dice nada, y no cuentan como sanas. El fuste es el tronco del árbol.
summary-unseen-none = En cada árbol con revisión completa se vio cada parte que la revisión pide.
summary-part-hidden = { $part } ({ $hidden })
summary-part-of = { $part } (en parte)
summary-part-of-hidden = { $part } (en parte: { $hidden })
summary-not-done = Lo que este documento no hace
summary-not-done-roots = No se calculan las raíces ni su agarre en el suelo; solo se vio lo que asoma.
summary-not-done-wood = La madera del interior del tronco no se midió, salvo donde una ficha lo diga.
summary-not-done-risk = El riesgo consta solo donde lo evaluó una persona con nombre; en lo demás la ficha dice “sin evaluar”.

# Site summary: the plan.
summary-plan = El plano
summary-plan-lead = Cada árbol con su etiqueta y su copa y, en naranja, el suelo que hay que dejar libre mientras se trabaja en él.
summary-plan-described = Plano de { $site }, con el norte arriba: { $trees ->
    [one] un árbol
   *[other] { $trees } árboles
  }, el borde de la propiedad, los lugares que usa la gente, las líneas aéreas y el suelo que hay que dejar libre alrededor de cada árbol
summary-plan-caption = Dibujado con posiciones tomadas en el lugar, a 1:{ $scale } en esta hoja. Un anillo fino alrededor de un árbol muestra con qué precisión se conoce su posición.
summary-plan-no-place = No están en el plano, porque no se tomó su posición: { $trees }.
summary-plan-sheet = Parte { $name }
summary-plan-none = No se puede dibujar el plano: en esta propiedad no se tomó ninguna posición.
legend-property = Borde de la propiedad
legend-tree = Árbol
legend-crown = Copa
legend-dead-crown = Copa de un árbol muerto
legend-keep-out = Dejar libre mientras se trabaja
legend-line = Línea aérea
legend-approach = Franja a lo largo de la línea en la que no entra nadie ni nada
legend-accuracy = Precisión de la posición
legend-me = Usted, ahora
legend-entered = Lo que se anota ahora
legend-target = Lugar que usa la gente
legend-weakest = Dirección más débil
legend-opening = Abertura en el fuste
plan-north = N

# Site summary: what to close, move, guard.
summary-close = Qué cerrar, retirar o vigilar
summary-close-lead = Mientras se trabaja en un árbol, nadie salvo la cuadrilla puede estar dentro de su línea naranja. La cuadrilla necesita ayuda con lo siguiente.
summary-close-nothing = Dentro del suelo que hay que dejar libre no hay nada más que los propios árboles.
summary-close-done = El trabajo está hecho, y ya no hay que cerrar nada, en { $trees }.
summary-close-table = Qué hay dentro del suelo que hay que dejar libre, y qué hacer con ello
summary-close-what = Qué
summary-close-do = Qué hacer
summary-close-for = Mientras se trabaja en estos árboles
summary-close-edge = Terreno más allá del borde de la propiedad
summary-close-lands = Pueden caer piezas ahí: { $trees }
summary-action-empty-rooms = Nadie en las habitaciones del lado del árbol, o trabajar de otra forma
summary-action-close-off = Cerrado, con alguien que impida el paso
summary-action-move-away = Retirado antes de empezar el trabajo
summary-action-guard = Vigilado por una persona
summary-action-protect = Cubierto o protegido de otra forma
summary-action-ask-neighbour = El vecino está de acuerdo y sabe el día
summary-action-call-line-owner = Se llama al titular de la línea antes de empezar el trabajo
summary-permissions = Permisos
summary-permissions-table = Los permisos y su estado
summary-permission = Permiso
summary-permission-for = Para
summary-permission-state = Estado
summary-permission-site = la propiedad
summary-permission-not-asked = aún por pedir
summary-permission-on = { $answer } el { $day }
summary-permissions-none = Todavía no se ha mirado ningún permiso. El trabajo no empieza antes de hacerlo.

# Site summary: schedule.
summary-schedule = Relación de árboles
summary-schedule-table = Cada árbol con su tamaño, el trabajo propuesto y la página de su ficha
summary-tag = Árbol
summary-species = Especie
summary-height = Altura
summary-girth = Perímetro
summary-work = Trabajo propuesto
summary-priority = Para cuándo
summary-page = Pág.
summary-species-in-full = { $common } ({ $latin })
summary-species-unknown = especie desconocida
summary-no-work = ningún trabajo propuesto

# Site summary: one record a tree.
summary-records = Árbol por árbol
summary-tree-name = { $tag } · { $species }
summary-spread = Copa
summary-spread-value = { $radius } hasta su lado más ancho
summary-lean = Inclinación
summary-lean-upright = derecho, a ojo
summary-lean-toward = { $lean } hacia el { $side }
summary-life = Estado
summary-dieback = muerte regresiva en el { $share } de la copa
summary-seen-on = Revisado
summary-seen-on-by = { $day }, por { $who }
summary-level = Cuán a fondo
summary-not-looked-at = Este árbol todavía no se ha revisado. No se sabe nada de su estado.
summary-not-measured = sin medir
summary-unknown = no se sabe
summary-findings = Qué se encontró
summary-findings-none = En las partes que se vieron no se encontró nada.
summary-finding-place = { $part }, { $place }
summary-finding-height = a { $height }
summary-finding-side = en el lado { $side }
summary-finding-both = a { $height } en el lado { $side }
summary-photo-missing = Una foto de este árbol no se pudo leer y se ha dejado fuera: { $file }.
summary-photo-described = Foto del árbol { $tag }
summary-photo-finding = Foto del árbol { $tag }, hallazgo { $number }: { $code }
summary-photo-caption = { $number }: { $caption }
summary-profile-described = Vista lateral del árbol { $tag }, de { $height } de alto, desde el { $side }, con sus hallazgos marcados por número
summary-profile-caption = Visto desde el { $side }. La persona da la escala.
summary-risk = Riesgo
summary-risk-not-assessed = Sin evaluar.
summary-risk-table = Riesgo para cada diana, según se evaluó
summary-risk-target = Diana
summary-risk-part = Parte
summary-risk-likelihood = Fallo, impacto
summary-risk-likelihood-value = { $failure }, { $impact }
summary-risk-consequences = Consecuencias
summary-risk-rating = Riesgo
summary-risk-assessor = Evaluado por
summary-risk-assessor-value = { $assessor }, { $level }, durante { $months }
summary-risk-targets-not-assessed = Sin evaluar: { $targets }.
summary-record-work = Trabajo propuesto
summary-work-with-priority = { $work }: { $priority }
summary-work-note = { $work }. { $note }
summary-inside = Dentro del tronco de { $tag }, a { $height }
summary-inside-thinnest = Pared más delgada
summary-inside-opening = Abertura
summary-inside-left = Resistencia que queda
summary-inside-method = Leído con
summary-inside-wall = { $wall } en el lado { $side }
summary-inside-at-least = al menos el { $left-down } de la de un tronco sano, a flexión
summary-inside-described = Sección del tronco del árbol { $tag } a { $height }, vista desde arriba, con el norte arriba: madera sana, pudrición, abertura, y la pared sana donde se leyó
summary-inside-caption = Desde arriba: madera sana clara, pudrición oscura. Entre las lecturas la pared está dibujada, no se conoce.
summary-reach = Cómo llegaría la cuadrilla
summary-reach-climber = Con una persona que trepa con cuerdas, tras una nueva revisión ese día.
summary-reach-ground = Desde el suelo.
summary-reach-platform = Desde una plataforma, o con grúa.
summary-reach-neighbour-tree = Desde un árbol vecino.
summary-reach-inspect = Nadie sube al árbol; solo se revisa.
summary-reach-no-work = Nadie sube al árbol.
summary-reach-open = Sin decidir todavía; la cuadrilla decide ese día, y puede elegir otra forma de trabajo.
summary-record-unseen = Lo que no se pudo ver
summary-record-unseen-none = Se vieron todas las partes que pide la revisión.
summary-record-unseen-all = Solo se hizo una primera revisión; no se recorrieron las partes de una revisión completa.
summary-next-look = Próxima revisión
summary-next-look-open = sin fecha

# Climb sheets: one page a tree, in the order needed at its foot.
sheet-title = Hojas de trepa
sheet-subject = Una página por árbol para la cuadrilla al pie, para el { $day }
sheet-foot = { $site }, { $day }
sheet-tree = { $tag } { $species }
sheet-under-tree = { $way } · { $height } de alto
sheet-nobody-climbs = No hace falta que nadie trepe a este árbol
sheet-way-open = forma de trabajo sin decidir
sheet-stops = Alto
sheet-limits = Solo dentro de estos límites
sheet-mind = Tener presente
sheet-besides = Además
sheet-refer = No antes de resolver esto
sheet-refer-together = No lo impide una sola cosa, pero las dudas de abajo pesan demasiado juntas. Medir otra vez, elegir otro anclaje, u otra forma.
sheet-gaps = Falta comprobar
sheet-more-gaps = { $count ->
    [one] … y un punto más: ver la página del árbol.
   *[other] … y { $count } puntos más: ver la página del árbol.
  }
sheet-remarks = Conviene saber
sheet-who = Quién puede trepar
sheet-who-climbs = Trepa: { $names }
sheet-who-climbs-and-seconds = Trepa, o es segunda persona: { $names }
sheet-who-seconds = Segunda persona en el suelo: { $names }
sheet-who-nobody = Nadie de la cuadrilla de hoy
sheet-who-no-second = Sin segunda persona: no trepa nadie
sheet-who-not = { $name }: { $reason }
sheet-anchor = Anclaje y cuerda
sheet-anchor-place = Anclaje
sheet-anchor-at = { $name }, a { $height }
sheet-anchor-at-side = { $name }, a { $height }, rama hacia el { $side }
sheet-anchor-none = no se eligió anclaje
sheet-anchor-nameless = anclaje
sheet-system = Sistema
sheet-rope = Cuerda
sheet-rope-length = al menos { $length }
sheet-rope-stopper = al menos { $length }, con nudo de tope en el extremo
sheet-throw = Lanzar
sheet-throw-to = a { $height }
sheet-ascent = Subir por
sheet-ascent-side = el lado { $side }
sheet-load-test = Prueba de carga
sheet-before = Antes de subir
sheet-before-load-test = Prueba de carga sin hacer: el peso de dos personas solo en la cuerda, nadie debajo, una observa el anclaje.
sheet-before-look-again = Mirar hoy otra vez: cables, ramas colgadas, insectos, raíces, base.
sheet-load-test-held = aguantó; no vale para resbalones ni tirones de lado
sheet-load-test-failed = el anclaje cedió: nadie trepa por él
sheet-pace = A pasos desde el fuste
sheet-pace-everyone = Nadie dentro
sheet-pace-crew = Cuadrilla fuera
sheet-pace-lands = Cae dentro
sheet-pace-downhill = … por el lado de cuesta abajo
sheet-pace-inside = Dentro: { $what }
sheet-pace-none = Todavía no se puede dar distancia: falta el tamaño o la forma de trabajo.
sheet-apart = No al mismo tiempo que { $trees }
sheet-wires = Cables
sheet-rescue = Si alguien se hace daño
sheet-rescue-none = Sin plan de rescate: no trepa nadie
sheet-meeting-point = Esperar en
sheet-grid-reference = Dictar
sheet-signal = Teléfono
sheet-first-aider = Socorrista
sheet-casualty-unit = Se lleva a
sheet-rescue-not-noted = sin anotar

sheet-judged-without-hour = Valorado desde el suelo el { $day }; hora y tiempo sin anotar. Inspección: { $level }.
sheet-not-judged = Nadie ha revisado todavía este árbol.
sheet-caution-ends = Deja de valer al acabar el día, con otro trabajo, tras una tormenta o en otro anclaje.
paper-language = es
summary-profile-behind = lado de atrás
sheet-weather-wind = viento { $wind }
sheet-weather-wet = corteza mojada
sheet-weather-ice = hielo

## Trees from another inventory: what was guessed

import-delimited = Las columnas van separadas por { $delimiter }; el texto está en { $encoding }.
import-delimiter-comma = comas
import-delimiter-semicolon = punto y coma
import-delimiter-tab = tabuladores
import-delimiter-bar = barras
import-decimal-comma = Los números se leen con coma decimal.
import-column = La columna “{ $column }” se lee como { $field }.
import-column-with-unit = La columna “{ $column }” se lee como { $field } en { $unit }.
import-column-unit-assumed = La columna “{ $column }” se lee como { $field }. No dice unidad: se supone { $unit }.
import-tags-told-apart = { $count ->
    [one] { $count } etiqueta está más de una vez: se le pone la clave detrás.
   *[other] { $count } etiquetas están más de una vez: a cada una se le pone la clave detrás.
}
import-tags-from-key = Ninguna columna tiene etiquetas: la clave hace de etiqueta.
import-tags-from-row = Ninguna columna tiene etiquetas ni una clave única: los árboles se numeran en el orden de las filas.
import-crown-halved = Como radio de la copa se toma la mitad de su diámetro. Si el diámetro es una media, el radio mayor puede ser más.
import-diameter-to-girth = Los diámetros se convierten en perímetros, como de un fuste redondo.
import-no-day = No se da ningún día, así que las medidas no tienen fecha. Indicar el día en que se tomaron.
import-field-tag = la etiqueta
import-field-key = la clave única
import-field-species = la especie
import-field-common-name = el nombre común
import-field-lat = latitud
import-field-lon = longitud
import-field-accuracy = la precisión de la posición
import-field-height = altura
import-field-girth = perímetro
import-field-diameter = diámetro del fuste
import-field-crown-radius = radio de la copa
import-field-crown-diameter = diámetro de la copa
import-field-lean = inclinación
import-field-note = notas

## Desk command

desk-zone-tree = Árbol { $tag }
desk-zone-unseen = sin inspección: aún no se sabe nada de este árbol
desk-zone-planned = previsto
desk-zone-drop = algo puede caer a menos de { $drop-up }
desk-zone-keep-out = nadie a menos de { $everyone-up } del fuste
desk-zone-downhill = cuesta abajo { $downhill-up }
desk-zone-crew = la cuadrilla con tarea, a no menos de { $crew-up }
desk-zone-rule = lo fija: { $rule }
desk-zone-source = fuente: { $source }
desk-zone-caution = Medido desde el fuste. Más cuesta abajo, con viento, y con puntas secas o árboles enganchados. Una zona no dice nada de si se puede trepar a un árbol. Deciden la normativa local y el arborista cualificado en el lugar.
desk-zone-no-trees = Esta propiedad aún no tiene árboles.

# The judgement as a table. Heads of its columns; a few words each, since a column is narrow.
desk-judge-head = { $site }: valorado desde el suelo para el { $day }
desk-judge-no-trees = Esta propiedad aún no tiene árboles.
desk-judge-table-note = Las distancias son desde el fuste; la de seguridad es la mayor, cuesta abajo donde el terreno se inclina. La puntuación es una ayuda propia de la cuadrilla: puntos con los valores centrales y, debajo, el intervalo que contiene 8 casos de cada 10. Una sola cifra significa que ninguna lectura dudosa la mueve. No es una nota del árbol.
desk-head-tag = Etiqueta
desk-head-species = Especie
desk-head-size = Altura e inclinación
desk-head-way = Forma de trabajo
desk-head-verdict = Dictamen
desk-head-score = Puntos
desk-head-drop = Zona de caída
desk-head-keep-out = Nadie a menos de
desk-head-rule = Lo fija
desk-head-next-look = Próxima revisión
desk-way-open = sin decidir
desk-not-needed = no hace falta
desk-score =
    { $points }
    { $low }–{ $high }
desk-rule-of-other-way = { $way }: { $rule }
desk-short-zone-fell = { $lengths } × longitud
desk-short-zone-removal = copa + { $beyond-crown }
desk-short-zone-pieces = copa + 2 × pieza
desk-short-zone-flight = vuelo de una pieza
desk-short-zone-swing = péndulo + { $beyond-drop }
desk-short-zone-prune-barrier = línea de goteo + { $beyond-crown }
desk-short-zone-beyond-drop = zona de caída + { $beyond-drop }

desk-site-stops = Hoy no trepa nadie aquí
desk-site-gaps = Por resolver para toda la propiedad
desk-inside = Qué queda dentro de la distancia de seguridad, y qué hacer con ello
desk-inside-nothing = Dentro no queda nada que esté anotado.
desk-inside-trees = { $count ->
    [one] mientras se trabaja en el árbol { $trees }
   *[other] mientras se trabaja en cualquiera de estos árboles: { $trees }
}
desk-inside-landing = { $count ->
    [one] ahí pueden caer piezas del árbol { $trees }
   *[other] ahí pueden caer piezas de los árboles { $trees }
}
desk-apart = No al mismo tiempo
desk-apart-none = No hay dos árboles tan cerca que no se pueda trabajar en ambos a la vez.
desk-apart-tree = { $tree }: no junto con { $others }
desk-why = Por qué, árbol por árbol
desk-why-tree = { $tag } · { $species }: { $answer }
desk-why-more = y { $count } más: --explain { $tag }
desk-refer-by-score = Aquí no lo impide una sola cosa, pero juntas sí: la puntuación puede bajar hasta { $low }. Medir lo que se indica abajo, elegir otro anclaje, u otra forma.
desk-judge-unsettled = { $count ->
    [one] Un valor está junto a otro hasta que alguien decida; aquí cuenta el último anotado.
   *[other] { $count } valores están junto a otros hasta que alguien decida; aquí cuentan los últimos anotados.
}
desk-judge-unread = { $count ->
    [one] Un valor es de una versión más nueva y se ha dejado fuera.
   *[other] { $count } valores son de una versión más nueva y se han dejado fuera.
}

desk-explain-basis = Valorado para el { $day } con las reglas “{ $rules }”, versión { $version } del método.
desk-explain-stops = Impedimentos
desk-explain-gaps = Falta comprobar
desk-explain-refer = Lo que deja el dictamen en “{ verdict-refer }”
desk-explain-limited = Lo que deja el dictamen en “{ verdict-limited }”
desk-explain-limits = Límites, y lo que más puntos cuesta
desk-explain-remarks = Conviene saber
desk-explain-score = Puntuación: { $points } de 100, 8 casos de cada 10 entre { $low } y { $high }. Puntos perdidos:
desk-explain-share = × { $factor } · { $cause }
desk-explain-next = Lo siguiente: { $what } Unos { $cost }; quita el { $gain } de la dispersión.
desk-explain-margins = Márgenes: resistencia entre carga; 2 es un impedimento y 6 es todo
desk-explain-margin = { $part }: { $central } (8 casos de cada 10 entre { $low } y { $high })
desk-explain-modulus = queda al menos el { $left-down } de la resistencia de la madera a flexión
desk-explain-people = Quién puede trepar
desk-person-climbs-and-rescues = { $name }: puede trepar, puede bajar a quien trepe
desk-person-climbs = { $name }: puede trepar
desk-person-rescues = { $name }: no puede trepar aquí, puede bajar a quien trepe
desk-person-stays = { $name }: no puede trepar aquí
desk-explain-zones = Zonas, por forma de trabajo
desk-explain-zone = { $way }: nadie a menos de { $keep-up }, algo puede caer a menos de { $drop-up }; lo fija { $rule }
desk-explain-zone-downhill = { $way }: nadie a menos de { $keep-up } ({ $downhill-up } cuesta abajo), algo puede caer a menos de { $drop-up }; lo fija { $rule }
desk-explain-working = El cálculo, en unidades métricas, con los valores centrales
desk-imported = { $site }: { $trees ->
    [one] un árbol incorporado
   *[other] { $trees } árboles incorporados
  } a “{ $folder }”.
desk-inventory-rows = { $rows } filas: { $trees } dieron un árbol, { $refused } no, { $blank } estaban en blanco.
desk-inventory-guesses = Lo que se supuso; usar --map donde una suposición no acierte
desk-inventory-refused = { $count ->
    [one] Una fila no dio árbol
   *[other] { $count } filas no dieron árbol
}
desk-inventory-left-out = { $count ->
    [one] Un valor se dejó fuera de su árbol
   *[other] { $count } valores se dejaron fuera de sus árboles
}
fault-of-inventory-only = Esto es para árboles de otro origen; un archivo de propiedad dice por sí mismo lo que contiene.
desk-written = Escrito: { $path }
desk-yes = sí
desk-demo-ask = “{ $folder }” ya contiene una demostración. ¿Sustituirla con todo lo que hay dentro? sí o no:
desk-demo-left = No se ha cambiado nada.
desk-demo-photos = Fotos
desk-packing = Escribiendo el paquete
desk-taking-pack = Incorporando el paquete
desk-map-files = Archivos de mapa
desk-demo-invented = El lugar, sus árboles y su gente son inventados; las fotos están dibujadas.
desk-demo-made = Hecho en “{ $folder }”: un cuaderno de campo, { $files }.
desk-demo-next = El cálculo de un árbol, línea por línea: bolewalk judge { $folder } --explain 04
fault-demo-is-there = Aquí ya hay una demostración, y no se puede preguntar a nadie si sustituirla. Decir --yes, o indicar otra carpeta.
fault-folder-not-a-demo = Esta carpeta contiene lo que la demostración no puso, y se queda como está: { $found }. Indicar otra carpeta.
fault-several-sites = Este cuaderno de campo contiene varias propiedades. Indicar una con --site.

## Starter codes: what each grade means. The English sentences stand in the starter codebook.

grade-soil-movement-1 = Una grieta muy fina o un leve abombamiento del suelo en un lado.
grade-soil-movement-2 = Una grieta clara, o el suelo levantado un palmo.
grade-soil-movement-3 = El plato de raíces se levanta, o se abren huecos bajo las raíces.
grade-roots-cut-1 = Raíces pequeñas cortadas, ninguna más gruesa que un pulgar.
grade-roots-cut-2 = Raíces más gruesas que un pulgar cortadas en un lado.
grade-roots-cut-3 = Raíces principales cortadas, o el suelo excavado en más de un lado.
grade-girdling-roots-1 = Una raíz aprieta menos de una quinta parte del perímetro.
grade-girdling-roots-2 = Las raíces aprietan hasta dos quintas partes del perímetro.
grade-girdling-roots-3 = Las raíces aprietan más de dos quintas partes del perímetro, o falta el ensanche de la base.
grade-decay-1 = Madera blanda hasta la profundidad de una falange.
grade-decay-2 = Una cavidad o madera blanda de un palmo de hondo, con madera firme alrededor.
grade-decay-3 = Una cavidad profunda, un hueco abierto, o madera blanda en más de un tercio del perímetro.
grade-fire-hollow-1 = Corteza carbonizada con una cicatriz poco honda en la madera.
grade-fire-hollow-2 = Un hueco quemado en la base.
grade-fire-hollow-3 = La base está quemada hasta quedar en cáscara.
grade-bracket-unnamed-1 = Un solo carpóforo, o uno viejo, que nadie supo identificar.
grade-bracket-unnamed-2 = Varios carpóforos que nadie supo identificar, en un lado.
grade-bracket-unnamed-3 = Carpóforos que nadie supo identificar, todo alrededor o a varias alturas.
grade-kretzschmaria-1 = Una costra delgada en un punto de la base.
grade-kretzschmaria-2 = Costra entre dos o más raíces de la base.
grade-kretzschmaria-3 = Costra en casi toda la base, o la madera rompe como la loza.
grade-meripilus-1 = Una roseta cerca de la base.
grade-meripilus-2 = Rosetas en un lado, a lo largo de las raíces.
grade-meripilus-3 = Rosetas en varios lados, o raíces que se hallaron podridas por debajo.
grade-phaeolus-1 = Un carpóforo en la hierba cerca de la base.
grade-phaeolus-2 = Carpóforos en la base, en un lado.
grade-phaeolus-3 = Carpóforos en varios lados, o cubos pardos de madera podrida.
grade-heterobasidion-1 = Una costra baja en la base.
grade-heterobasidion-2 = Varias costras, o resina que mana de la base.
grade-heterobasidion-3 = Costras alrededor de la base, o la base hinchada como una botella.
grade-inonotus-1 = Un carpóforo en una rama.
grade-inonotus-2 = Carpóforos en el fuste, o más de uno en una rama.
grade-inonotus-3 = Carpóforos a varias alturas, o corteza hundida debajo.
grade-ganoderma-1 = Un carpóforo, con madera firme y sonido claro alrededor.
grade-ganoderma-2 = Varios carpóforos en un lado.
grade-ganoderma-3 = Carpóforos en varios lados, o madera blanda debajo.
grade-armillaria-1 = Setas en grupo en su época, o cordones negros, con la corteza firme.
grade-armillaria-2 = Láminas blancas bajo la corteza en un lado.
grade-armillaria-3 = Láminas blancas bajo la corteza en varios lados, o corteza suelta en la base.
grade-bracket-other-1 = Un carpóforo de un hongo identificado, con madera firme alrededor.
grade-bracket-other-2 = Varios carpóforos de un hongo identificado en un lado.
grade-bracket-other-3 = Carpóforos de un hongo identificado todo alrededor, o madera blanda debajo.
grade-stem-crack-1 = Una costura cerrada, cubierta por madera de cicatrización.
grade-stem-crack-2 = Una grieta abierta en un lado.
grade-stem-crack-3 = Una grieta de lado a lado, dos grietas enfrentadas, o una que se mueve.
grade-union-crack-1 = Una grieta antigua, cubierta y quieta.
grade-union-crack-2 = Una grieta reciente o abierta en la unión.
grade-union-crack-3 = La unión se abre o se mueve con el viento.
grade-included-bark-1 = Una unión estrecha con poca corteza metida dentro.
grade-included-bark-2 = Corteza metida a lo largo de la unión, con bultos a ambos lados.
grade-included-bark-3 = Corteza metida muy adentro, con la arruga hacia abajo, pudrición o exudado.
grade-limb-crack-1 = Una costura cerrada a lo largo de una rama.
grade-limb-crack-2 = Una grieta abierta a lo largo de una rama.
grade-limb-crack-3 = Una rama agrietada de lado a lado, retorcida, o que se vence por una grieta.
grade-lightning-strip-1 = Una franja estrecha y reciente sin corteza.
grade-lightning-strip-2 = Una franja reciente con madera astillada.
grade-lightning-strip-3 = Franjas recientes en varios lados, o madera que saltó.
grade-under-tension-1 = Una rama o un fuste doblado que otro árbol sujeta.
grade-under-tension-2 = Enganchado, o rajado y sujeto por las fibras.
grade-under-tension-3 = Arrancado, o rajado y a punto de saltar.
grade-hanger-1 = Una rama rota más delgada que una muñeca, colgada.
grade-hanger-2 = Una rama rota más gruesa que una muñeca, colgada.
grade-hanger-3 = Una punta rota o una rama pesada, colgada o medio desgajada.
grade-dead-limb-1 = Ramillas secas más delgadas que un pulgar.
grade-dead-limb-2 = Ramas secas de hasta el grueso de una muñeca.
grade-dead-limb-3 = Ramas secas más gruesas que una muñeca, o la punta seca.
grade-dieback-1 = Hoja rala o puntas desnudas en hasta una quinta parte de la copa.
grade-dieback-2 = Puntas desnudas y ramas secas en hasta la mitad de la copa.
grade-dieback-3 = Más de la mitad de la copa desnuda o muerta.
grade-topping-regrowth-1 = Rebrote joven de un corte antiguo, más delgado que una muñeca, con el corte cerrado.
grade-topping-regrowth-2 = Rebrote pesado de un corte antiguo que no ha cerrado.
grade-topping-regrowth-3 = Rebrote pesado de una cabeza podrida o agrietada.
grade-wound-1 = Una herida pequeña que está cerrando.
grade-wound-2 = Una herida en hasta un tercio del perímetro, con la madera firme.
grade-wound-3 = Una herida en más de un tercio del perímetro, o con madera blanda debajo.
grade-canker-1 = Un abultamiento o chancro en menos de una quinta parte del perímetro.
grade-canker-2 = Un chancro o costilla en hasta dos quintas partes del perímetro.
grade-canker-3 = Un chancro en más de dos quintas partes del perímetro, o con grieta o pudrición.
grade-climbers-1 = Unas pocas guías de hiedra o trepadora; la corteza se ve.
grade-climbers-2 = La hiedra o la trepadora tapa un lado o las uniones.
grade-climbers-3 = La hiedra o la trepadora tapa el fuste todo alrededor, o carga la copa.
grade-stinging-insects-1 = Abejas, avispas o avispones entran y salen por un sitio.
grade-stinging-insects-2 = Se ve un nido lejos del recorrido.
grade-stinging-insects-3 = Se ve un nido en el recorrido, o están alborotadas.
grade-nest-or-roost-1 = Señales de que aquí anidan aves o se refugian murciélagos.
grade-nest-or-roost-2 = Un nido o refugio ocupado, lejos del trabajo.
grade-nest-or-roost-3 = Un nido o refugio ocupado, donde se va a trabajar.
grade-touching-wire-1 = Las ramillas tocan un cable cuando hay viento.
grade-touching-wire-2 = Hay ramas apoyadas en un cable.
grade-touching-wire-3 = Marcas de quemadura, o el árbol se apoya en un cable.
grade-other-1 = Otra cosa que parece leve.
grade-other-2 = Otra cosa que podría debilitar la parte.
grade-other-3 = Otra cosa que podría hacer fallar la parte hoy.

## Species: common names that are well established; the others go by their scientific name. The
## English ones stand in the table of species.

species-abies-alba = abeto blanco
species-abies-balsamea = abeto balsámico
species-abies-concolor = abeto del Colorado
species-acer-campestre = arce campestre
species-acer-macrophyllum = arce de hoja grande
species-acer-negundo = negundo
species-acer-nigrum = arce negro
species-acer-platanoides = arce real
species-acer-pseudoplatanus = falso plátano
species-acer-rubrum = arce rojo
species-acer-saccharinum = arce plateado
species-acer-saccharum = arce azucarero
species-aesculus-hippocastanum = castaño de Indias
species-ailanthus-altissima = ailanto
species-alnus-rubra = aliso rojo
species-betula-alleghaniensis = abedul amarillo
species-betula-nigra = abedul de río
species-betula-papyrifera = abedul papirífero
species-betula-pendula = abedul común
species-calocedrus-decurrens = cedro de incienso
species-carya-illinoinensis = pacana
species-castanea-dentata = castaño americano
species-cedrus-deodara = cedro del Himalaya
species-celtis-occidentalis = almez americano
species-celtis-sinensis = almez chino
species-chamaecyparis-lawsoniana = ciprés de Lawson
species-cinnamomum-camphora = alcanforero
species-cornus-florida = cornejo florido
species-eucalyptus-globulus = eucalipto azul
species-fagus-grandifolia = haya americana
species-fagus-sylvatica = haya común
species-fraxinus-americana = fresno americano
species-fraxinus-excelsior = fresno común
species-fraxinus-nigra = fresno negro
species-fraxinus-pennsylvanica = fresno de Pensilvania
species-fraxinus-velutina = fresno de Arizona
species-ginkgo-biloba = ginkgo
species-gleditsia-triacanthos = acacia de tres espinas
species-ilex-opaca = acebo americano
species-jacaranda-mimosifolia = jacarandá
species-juglans-nigra = nogal negro
species-juniperus-virginiana = enebro de Virginia
species-lagerstroemia-indica = árbol de Júpiter
species-larix-decidua = alerce europeo
species-larix-laricina = alerce americano
species-larix-occidentalis = alerce occidental
species-liquidambar-styraciflua = liquidámbar
species-liriodendron-tulipifera = tulipero de Virginia
species-maclura-pomifera = naranjo de los osages
species-magnolia-grandiflora = magnolio común
species-malus = manzano
species-nyssa-aquatica = tupelo de agua
species-nyssa-sylvatica = tupelo negro
species-picea-abies = abeto rojo
species-picea-glauca = pícea blanca
species-picea-pungens = pícea azul
species-picea-rubens = pícea roja
species-picea-sitchensis = pícea de Sitka
species-pinus-banksiana = pino de Banks
species-pinus-contorta = pino contorta
species-pinus-lambertiana = pino de azúcar
species-pinus-nigra = pino laricio
species-pinus-palustris = pino de hoja larga
species-pinus-ponderosa = pino ponderosa
species-pinus-resinosa = pino rojo americano
species-pinus-strobus = pino estrobo
species-pinus-sylvestris = pino silvestre
species-pinus-taeda = pino taeda
species-pinus-virginiana = pino de Virginia
species-pistacia-chinensis = pistacho chino
species-platanus-occidentalis = plátano occidental
species-platanus-x-acerifolia = plátano de sombra
species-populus-deltoides = chopo americano
species-populus-nigra = chopo negro
species-populus-tremuloides = álamo temblón americano
species-prunus-cerasifera = mirobolano
species-prunus-serotina = cerezo negro
species-pseudotsuga-menziesii = abeto de Douglas
species-pyrus-calleryana = peral de Callery
species-quercus-alba = roble blanco
species-quercus-bicolor = roble bicolor
species-quercus-coccinea = roble escarlata
species-quercus-falcata = roble rojo del sur
species-quercus-laurifolia = roble laurel
species-quercus-palustris = roble de los pantanos
species-quercus-phellos = roble sauce
species-quercus-robur = roble común
species-quercus-rubra = roble rojo americano
species-quercus-velutina = roble negro americano
species-quercus-virginiana = encina de Virginia
species-robinia-pseudoacacia = falsa acacia
species-sabal-palmetto = palmeto
species-salix-nigra = sauce negro
species-sassafras-albidum = sasafrás
species-sequoia-sempervirens = secuoya roja
species-sequoiadendron-giganteum = secuoya gigante
species-styphnolobium-japonicum = sófora
species-taxodium-distichum = ciprés calvo
species-thuja-occidentalis = tuya occidental
species-thuja-plicata = tuya gigante
species-tilia-americana = tilo americano
species-tilia-cordata = tilo de hoja pequeña
species-tilia-platyphyllos = tilo de hoja grande
species-tilia-x-europaea = tilo común
species-tsuga-canadensis = tsuga del Canadá
species-tsuga-heterophylla = tsuga occidental
species-ulmus-americana = olmo americano
species-ulmus-glabra = olmo de montaña
species-ulmus-parvifolia = olmo chino
species-ulmus-procera = olmo inglés
species-ulmus-pumila = olmo de Siberia
species-ulmus-rubra = olmo rojo
species-ulmus-x-hollandica = olmo holandés
species-washingtonia-robusta = palmera mexicana de abanico
species-zelkova-serrata = zelkova japonesa

## Drawings
