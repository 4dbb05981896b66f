// Spanish sentences about whether a build stands, by how much, what goes first and what would mend it. A kind of piece
// has a name of unknown gender, so that it stands behind "la pieza".

import type { StabilityTexts } from '../catalogue.ts';

export const stability: StabilityTexts = {
  piece: 'la pieza {number} ({kind})',
  table: 'la mesa',
  all: 'toda la construcción',
  less: 'menos de {amount}',
  tilt: '{degrees} (como un empujón de lado de {percent} de su peso)',
  'side.right': 'hacia la derecha',
  'side.back-right': 'hacia atrás a la derecha',
  'side.back': 'hacia atrás',
  'side.back-left': 'hacia atrás a la izquierda',
  'side.left': 'hacia la izquierda',
  'side.front-left': 'hacia delante a la izquierda',
  'side.front': 'hacia delante',
  'side.front-right': 'hacia delante a la derecha',
  'side.at': '{side} (a {degrees} girando desde la derecha)',
  'edge.past': '{length} más allá del borde',
  'edge.inside': '{length} por dentro del borde',
  'point.past': '{length} más allá de ese punto',
  'point.inside': '{length} antes de ese punto',
  'verdict.steady': 'Firme: según los cálculos se sostiene, también con la mesa inclinada {steady}.',
  'verdict.wobbly':
    'Tambaleante: según los cálculos se sostiene, pero se cae con una inclinación de menos de {steady}.',
  'verdict.too-close-stands':
    'Demasiado justo para decidir: según los cálculos se sostiene, pero se cae con una inclinación de menos de {close}.',
  'verdict.too-close-falls':
    'Demasiado justo para decidir: según los cálculos se cae, pero se sostendría con un movimiento de {step}.',
  'verdict.falls': 'Se cae: según los cálculos no puede sostenerse.',
  'verdict.rolls-at-a-touch': 'Rueda al tocarla: nada le impide rodar. Contacto por un lado redondo: {pieces}.',
  'verdict.not-predicted':
    'Sin predicción, solo medida: los cálculos valen para piezas rígidas que solo se apoyan unas en otras.',
  'verdict.needs-solver':
    'Según los cálculos se sostiene. No se calculó cuánto aguanta: esa parte del programa no está cargada.',
  'verdict.margin-not-decided':
    'Según los cálculos se sostiene. No se calculó cuánto aguanta: los cálculos se alargaron demasiado.',
  'verdict.not-decided': 'Sin decidir: los cálculos se alargaron demasiado.',
  'why.taped': 'Con cinta: {pieces}.',
  'why.glued': 'Con pegamento: {pieces}.',
  'why.leaning': 'En posición inclinada: {pieces}.',
  'why.nested': 'Una dentro de otra: {pieces}.',
  'why.paper-rolls': 'Papel doblado sobre un lado redondo, que se abolla en vez de rodar: {pieces}.',
  'bears.tips': 'Se sostiene hasta una inclinación de {tilt}. Después vuelca.',
  'bears.slides': 'Se sostiene hasta una inclinación de {tilt}. Después resbala.',
  'bears.wedged':
    'Se sostiene hasta una inclinación de {tilt}, donde menos aguanta es {side}. Después las piezas se empujan y se separan.',
  tips: 'Vuelca a {tilt}, donde menos aguanta es {side}, sin contar que resbale.',
  slides: 'Resbala a {tilt}, sin contar que vuelque.',
  'joint.holds':
    '{upper} sobre {lower}: el centro del peso de arriba está {where}; vuelca a {tips}, resbala a {slides}.',
  'joint.hangs': '{upper} sobre {lower}: el centro del peso de arriba está {where}; no aguanta.',
  'first.falls': 'Lo primero que se cae: {what}',
  'also.falls': 'Lo que se cae a la vez: {what}',
  'first.stands': 'Lo primero que cedería: {what}',
  'also.stands': 'Lo que cedería a la vez: {what}',
  'goes.over-edge':
    '{pieces}, volcando {side} sobre el borde de la parte que se apoya en {on}. El centro del peso está {where}.',
  'goes.over-point': '{pieces}, volcando {side} sobre un punto en {on}. El centro del peso está {where}.',
  'goes.slipping': '{pieces}, resbalando sobre {on}.',
  'goes.dropping': '{pieces}, sin nada debajo.',
  gap: '{upper} cuenta como apoyada también en {lower}, aunque queda un hueco de {gap}.',
  'move.all': '{piece}, con todo lo que tiene encima,',
  'move.holds': 'Mueve {what} {by}: según los cálculos así se sostiene, aunque quizá por poco.',
  'move.steadies':
    'Para que quede firme, mueve {what} {by}: según los cálculos así aguanta una inclinación de {steady}.',
  'move.none': 'No se encontró un solo movimiento de una pieza que se cae con el que se sostenga.',
  // En breve, para la franja debajo de una construcción.
  'brief.piece': 'la pieza {numbers}',
  'brief.pieces': 'las piezas {numbers}',
  'brief.tips': 'Puedes inclinar la mesa {degrees} antes de que vuelque.',
  'brief.slides': 'Puedes inclinar la mesa {degrees} antes de que resbale.',
  'brief.wedged': 'Puedes inclinar la mesa {degrees} antes de que las piezas se separen.',
  'brief.close': '{bears} Es demasiado justo: prueba con la de verdad.',
  'brief.one-over': '{what} vuelca',
  'brief.many-over': '{what} vuelcan',
  'brief.one-slips': '{what} resbala.',
  'brief.many-slips': '{what} resbalan.',
  'brief.one-drops': '{what} no tiene nada debajo.',
  'brief.many-drops': '{what} no tienen nada debajo.',
  'brief.past': '{goes}: el punto de equilibrio pasa el borde por {length}.',
  'brief.move': 'Mueve {what} {by} y se sostiene justo.',
  'brief.rolls': 'Nada le impide rodar: {pieces}.',
  'brief.not-predicted': 'Solo se mide: las cuentas son para piezas rígidas que se apoyan sin más.',
  'without.nothing': 'Sin {piece} no queda nada.',
  'without.steady': 'Sin {piece} el resto se sostiene y queda firme.',
  'without.wobbly': 'Sin {piece} el resto se sostiene, pero se tambalea.',
  'without.too-close-stands': 'Sin {piece} es demasiado justo para decidir: según los cálculos el resto se sostiene.',
  'without.too-close-falls': 'Sin {piece} es demasiado justo para decidir: según los cálculos se cae.',
  'without.falls': 'Sin {piece} se cae, según los cálculos.',
  'without.rolls-at-a-touch': 'Sin {piece} el resto rueda al tocarlo.',
  'without.not-predicted': 'Sin {piece}: sin predicción.',
  'without.needs-solver': 'Sin {piece} el resto se sostiene, según los cálculos. No se calculó cuánto aguanta.',
  'without.margin-not-decided': 'Sin {piece} el resto se sostiene, según los cálculos. No se calculó cuánto aguanta.',
  'without.not-decided': 'Sin {piece}: sin decidir, los cálculos se alargaron demasiado.',
  'towards.bears': 'Con la mesa inclinada {side} se sostiene hasta {tilt}.',
  'towards.nothing': 'Con la mesa inclinada {side} se va al tocarla.',
  'towards.unknown': 'No se sabe para este lado: ya se cae con la mesa plana, o no se predice, o no se calculó.',
  'limit.stiff':
    'Las piezas se toman como rígidas y sin pegar. El papel blando o abollado, la cinta, el pegamento y una mesa que tiembla no entran en los cálculos.',
  'limit.kindly':
    'Si las piezas pueden sostenerse entre sí de alguna manera, los cálculos dicen que lo hacen: si se acuñan o agarran mucho, el resultado puede ser demasiado bueno.',
  'limit.close': 'Con menos de {close} es demasiado justo para decidir.',
  'limit.grip':
    'Cuánto agarran las piezas (la fricción) se escribe con el juego de piezas. Para papel sobre papel no se encontró ningún número publicado: el 0,4 de costumbre es una suposición.',
  'limit.test': 'Decide la prueba real sobre la mesa.',
};
