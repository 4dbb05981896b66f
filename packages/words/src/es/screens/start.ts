// Textos en español de la primera pantalla.

import type { start as pattern } from '../../en/screens/start.ts';

export const start: Readonly<Record<keyof typeof pattern, string>> = {
  'start.title': 'Mide lo que construyes.',
  'start.lede': 'Cairnmark mide sólidos apilados, dice si se sostienen y enseña todas las cuentas.',
  'start.in-group': '¿En un grupo?',
  'start.first': 'Apila tu primera torre',
  'start.first-what': 'Toca cinco piezas. Mira cuánto mide, si se sostiene y cuántos puntos gana.',
  'start.first-go': 'Empezar a apilar',
  'start.our-group': 'Nuestro grupo',
  'start.teaching': '¿Das clase?',
  'start.demo': 'Mira la clase de muestra',
  'start.demo-what': 'Skerry Light: {groups} grupos, {challenges} retos. Todo es inventado.',
  'start.demo-open': 'Abrir la muestra',
  'start.new': 'Clase nueva',
  'start.new-what': 'Tus grupos, un juego de piezas y los primeros retos, en pocos minutos.',
  'start.new-go': 'Hacer una clase nueva',
  'start.file': 'Abre un archivo de clase',
  'start.file-what': 'Una clase que guardaste antes, en este u otro ordenador.',
  'start.file-choose': 'Elegir un archivo',
  'start.file-refused': 'El archivo {file} no se abrió:',
  'start.file-gone': 'Ya no está donde estaba, o no se puede leer. Elígelo otra vez.',
  'start.not-opened': 'No se abrió.',
  'start.open-now': 'Abierta ahora: {name}',
  'start.open-now-what': 'Este aparato no la guarda. Guárdala en un archivo antes de cerrar la página.',
  'start.file-more': 'y {count} más.',
  'start.last': 'La última vez aquí: {name}',
  'start.last-what': '{when}, {groups} grupos, guardada en este ordenador',
  'start.last-what-one': '{when}, 1 grupo, guardada en este ordenador',
  'start.go-on': 'Seguir',
  'start.other-classes': 'Otras clases guardadas aquí',
  'start.privacy': 'Sin cuentas ni nombres de alumnos. Nada sale de este aparato.',
  'start.tower':
    'Una torre de cinco sólidos de papel sobre papel cuadriculado: mide {height} según la regla de al lado',
  'start.tower-height': '{cm} cm',
  'start.kept-refused': 'La clase guardada en este aparato no se puede abrir:',
};
