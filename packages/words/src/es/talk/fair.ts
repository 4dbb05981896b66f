// Spanish texts about the points lab beside those of its screen: at the terminal.

export const fair = {
  'fair.title': '{challenge}: ¿a quién favorecen los puntos?',
  'fair.points': 'Puntos: {rows}.',
  'fair.no-points': 'Este reto todavía no da puntos.',
  'fair.counting': 'Cómo se cuenta: {counting}.',
  'fair.today': 'puntos de hoy',
  'fair.for-paper': 'por 100 cm²',
  'fair.favours-paper': 'Por 100 cm² de papel, quien más gana: {favourites}.',
  'fair.each': '¿Qué cuerpos se pueden favorecer, con {most} por fila como máximo?',
  'fair.can': '{solid}: {rule}.',
  'fair.cannot': '{solid}: no. {why}',
  'fair.one': 'Puntos que favorecen a «{solid}» con {lead} o más de ventaja, {most} por fila como máximo',
  'fair.rule': '{number}. {rule}. {lead}',
  'fair.scores': 'Todas las piezas: {scores}.',
  'fair.score': '{solid} {points}',
  'fair.all-told': 'No hay otra regla que use otras cosas.',
  'fair.maybe-more': 'Puede haber más reglas; con --rules se dice cuántas buscar.',
  'fair.not-settled':
    'Se dejó tras {count} pasos: no se hallaron puntos, y nada muestra que no los haya. Prueba con menos filas o puntos más pequeños.',
  'fair.side': '{pieces}: {totals}',
  'fair.offer': '{offer} Entonces: {rule}. {lead}',
  'fair.offer-tried': 'Todo esto se ha probado.',
  'fair.even': 'Los puntos más justos, {most} por fila como máximo',
  'fair.even-share': '{spread} Es el {percent} %.',
};
