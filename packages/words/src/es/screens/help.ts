// Frases en español que dicen para qué sirve cada control.

import type { help as pattern } from '../../en/screens/help.ts';

export const help: Readonly<Record<keyof typeof pattern, string>> = {
  'help.frame': 'Construir, Tarjeta de puntos y Tablero son las tres pantallas de esta clase.',
  'help.who': 'El botón con el nombre de tu grupo cambia el grupo, el reto o el intento.',
  'help.settings': 'El idioma y las unidades de este aparato, y la clase como archivo.',
  'help.language': 'Cambia las palabras en este aparato. La clase queda igual.',
  'help.units': 'Muestra las longitudes en cm o en pulgadas. Lo medido queda igual.',
  'help.role': 'Los alumnos construyen, un medidor mide, un juez pone notas. El docente lo hace todo.',
  'help.class-file': 'Pone toda la clase en un archivo. Puedes abrirlo en otro ordenador.',
  'help.group': 'Muestra las construcciones de otro grupo.',
  'help.challenge': 'Muestra lo que este grupo construyó en otro reto.',
  'help.attempt': 'Muestra un intento anterior de este grupo.',
  'help.new-try': 'Empieza con la mesa vacía. Los intentos de antes se guardan.',
  'help.why': 'Muestra de dónde sale la respuesta.',
  'help.undo': 'Deshace lo último que hiciste.',
  'help.redo': 'Hace otra vez lo que deshiciste.',
  'help.clear': 'Quita todas las piezas. Deshacer las trae de vuelta.',
  'help.look': 'Mira la construcción desde otro lado.',
  'help.keys': 'Lista las teclas que hacen lo mismo que tus dedos.',
  'help.move': 'Mueve un poco la pieza hacia ese lado.',
  'help.turn': 'Gira un poco la pieza, vista desde arriba.',
  'help.lay-over': 'Tumba la pieza sobre su cara siguiente.',
  'help.take-off': 'Quita la pieza. Vuelve al estante.',
  'help.order': 'Pone la pieza antes o después en la torre.',
  'help.copy': 'Pone encima otra pieza igual.',
  'help.exact': 'Escribe dónde está la pieza, cómo se apoya y cómo se sujeta.',
  'help.in-words': 'Cuenta la construcción con palabras, pieza a pieza.',
  'help.teacher': 'Pregunta dos cosas más: una mesa inclinada y una pieza quitada.',
};
