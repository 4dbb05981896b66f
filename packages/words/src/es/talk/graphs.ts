// Spanish texts of the graphs on the Board.

export const graphs = {
  'graphs.table': 'Ver como tabla',
  'graphs.no-table': 'Ocultar la tabla',
  'graphs.print': 'Imprimir los gráficos',
  'graphs.none': 'Ningún grupo tiene resultado todavía. Los gráficos llegan con el primero.',
  'graphs.value-of': '{value}: {groups}',
  'graphs.short-names': '{first} + {more}',
  'graphs.with-unit': '{measure}, {unit}',
  // Line plot.
  'graphs.dots-height': '¿Qué altura?',
  'graphs.dots': '{measure}: ¿cuánto tiene cada grupo?',
  'graphs.dots-lede': 'Cada punto es un grupo.',
  'graphs.dots-rounded': 'Está en la marca más cercana; hay una cada {step}.',
  'graphs.dots-error': 'Cada valor está medido con {error}.',
  'graphs.dots-alt': 'Diagrama de puntos de la medida «{measure}», sobre una regla de {from} a {to}. {values}.',
  'graphs.names-in-table': 'No hay sitio para los nombres. Están en la tabla.',
  // First try and best try.
  'graphs.tries': '¿Ayudó intentarlo otra vez?',
  'graphs.tries-lede': 'Grupos que lo intentaron otra vez: {again}. Mejor que la primera vez: {better}.',
  'graphs.tries-alt': 'Líneas del primer intento al mejor. {values}.',
  'graphs.tries-from': '{group}: de {first} a {best}',
  'graphs.tries-one': '{group}: un intento, {best}',
  'graphs.first-try': 'primer intento',
  'graphs.best-try': 'mejor intento',
  // Height against base.
  'graphs.scatter': '¿Una base pequeña da una torre alta?',
  'graphs.scatter-lede': 'Cada punto es una construcción.',
  'graphs.some-names': 'Los nombres que no caben están en la tabla.',
  'graphs.scatter-alt': 'Altura según la base. {values}.',
  'graphs.scatter-of': '{group}: base {base}, altura {height}',
  'graphs.front-show': 'Mostrar lo mejor posible',
  'graphs.front-lede':
    'La línea con escalones son las mejores torres con cada pieza en el centro de la de abajo: qué altura sobre qué base.',
  'graphs.front-alt': 'Lo mejor posible: {values}.',
  'graphs.front-of': 'base {base}, altura {height}',
  'graphs.front-wait': 'Lo mejor posible se puede mostrar cuando cada grupo tiene un resultado.',
  'graphs.front-row': 'Lo mejor posible, escalón {number}',
  'graphs.front-none': 'No hay tal línea: la búsqueda no encontró la mejor construcción con estas reglas.',
  // Which solids.
  'graphs.used': '¿Qué cuerpos se usaron?',
  'graphs.used-lede': 'Las {count} piezas de las construcciones que cuentan.',
  'graphs.used-in-ones': 'Cada cuadro es una pieza.',
  'graphs.used-alt': 'Gráfico de barras de las piezas usadas. {values}.',
  'graphs.unused': 'Sin usar: {kinds}.',
  'graphs.others': 'todos los demás',
  'graphs.solid': 'Cuerpo',
  'graphs.pieces': 'Piezas',
  // Box plot.
  'graphs.box': '¿Dónde está la mitad central?',
  'graphs.box-lede': 'La caja contiene la mitad central de {count} resultados. La línea dentro es la mediana.',
  'graphs.box-few': 'Un diagrama de caja necesita {most} resultados o más. Ahora hay {count}.',
  'graphs.box-alt':
    'Diagrama de caja. Mínimo {least}, primer cuartil {lower}, mediana {median}, tercer cuartil {upper}, máximo {most}.',
  'graphs.quartiles': 'Cuartiles',
  'graphs.without-median': 'sin la mediana',
  'graphs.with-median': 'con la mediana',
  'graphs.rule-without-median':
    'Un cuartil es la mediana de una mitad. Si la cantidad es impar, la mediana no está en ninguna mitad.',
  'graphs.rule-with-median':
    'Un cuartil es la mediana de una mitad. Si la cantidad es impar, la mediana está en las dos mitades.',
  'graphs.least': 'Mínimo',
  'graphs.lower': 'Primer cuartil',
  'graphs.median': 'Mediana',
  'graphs.upper': 'Tercer cuartil',
  'graphs.most': 'Máximo',
  // What the controls do.
  'graphs.help-table': 'Muestra los números del gráfico en una tabla, y los vuelve a ocultar.',
  'graphs.help-print': 'Imprime en papel todos los gráficos de este reto.',
  'graphs.help-front':
    'Calcula las mejores torres que permite este juego de piezas y las dibuja como línea con escalones.',
  'graphs.help-quartiles': 'En las escuelas los cuartiles se hallan de dos maneras. Elige la de tu clase.',
};
