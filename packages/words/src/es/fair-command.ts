// Textos en español de las órdenes sobre los puntos: favour y even.

import type { fairCommand as pattern } from '../en/fair-command.ts';

export const fairCommand: Readonly<Record<keyof typeof pattern, string>> = {
  'help.favour': `cairnmark favour [ARCHIVO] [--solid NOMBRE] [--lead N] [--most N] [--rules N] [--negative] [--half]
                 [--count LISTA] [--counting A|B|C] [--challenge ID] [--as table|json] [--lang en|es]

Muestra qué gana una pieza de cada cuerpo con los puntos de un reto, y busca los puntos más pequeños que
favorecen a un cuerpo, o dice por qué no los hay, con una prueba para sumar. ARCHIVO es una clase, un reto o
un juego de piezas; sin archivo es la clase de muestra.

  --solid NOMBRE   el cuerpo favorecido, por su nombre en el juego de piezas; sin él se prueba cada uno
  --lead N         cuántos puntos más que cada otro debe ganar como mínimo; 1 si no se dice
  --most N         ninguna fila da ni quita más que esto por cada uno; 10 si no se dice
  --rules N        cuántas reglas distintas se dicen como máximo; 3 si no se dice
  --negative       las filas también pueden quitar puntos
  --half           se permiten medios puntos
  --count LISTA    qué puede contar, como faces,edges,height; si no se dice, lo que se cuenta en una pieza.
                   Todas están en la cabecera de la tabla de --as json
  --counting A     cómo se cuentan caras, aristas y vértices: A solo cuerpos planos, B superficies curvas
                   aparte, C toda superficie es cara y todo borde arista; si no se dice, como en el reto
  --challenge ID   el reto, por su nombre o id; el primero si no se dice
  --as json        todo como datos, también las pruebas
`,
  'help.even': `cairnmark even [ARCHIVO] [--most N] [--negative] [--half] [--count LISTA] [--counting A|B|C]
               [--challenge ID] [--as table|json] [--lang en|es]

Busca los puntos más justos: con los que la pieza que menos gana tiene la mayor parte posible de la que más
gana, y dice si todas podrían ganar alguna vez lo mismo. ARCHIVO y las opciones son como en favour.
`,
  'usage.solid-unknown': 'No hay ningún cuerpo "{name}" en este juego de piezas. Usa uno de: {known}.',
  'usage.points-value': 'El valor de "{name}" no puede ser {value}. Usa un número de {step} a {most}.',
  'usage.count-unknown': '"{name}" no es nada que tenga una pieza. Usa algo de: {known}.',
  'usage.counting-unknown': 'No hay ninguna manera de contar "{value}". Usa A, B o C.',
  'usage.few-kinds': 'Este juego tiene menos de dos tipos de piezas: no hay nada que comparar.',
};
