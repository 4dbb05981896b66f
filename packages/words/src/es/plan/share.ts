// Spanish texts of the ways in which a try leaves a device and comes in.

export const share = {
  'share.title': 'Compartir este intento',
  'share.what':
    'Haz una foto de este código con el otro dispositivo. Allí elige la foto en «Traer un intento». Está aquí y en la pantalla Clase.',
  'share.code-label':
    'Código de {group}, {challenge}, intento {number}, para la cámara de otro dispositivo. El botón de abajo guarda el mismo intento como archivo.',
  'share.code-not': 'Guarda este intento como archivo.',
  'share.save': 'Guardar como archivo',
  'share.bring': 'Traer un intento',
  'share.bring-what':
    'Elige el archivo de un intento o una foto de su código; varios a la vez si quieres. Las fotos se leen en este dispositivo. Cairnmark no guarda ni envía ninguna.',
  'share.choose': 'Elegir archivos o fotos',
  'share.reading': 'Leyendo {file}',
  'share.read-all': 'Archivos abiertos: {count}.',
  'share.which': '{group}, {challenge}, intento {number}',
  'share.which-unknown': '{group}, {challenge}',
  'share.pieces': 'Construido con {pieces}.',
  'share.readings': 'Altura con la regla: {lengths}.',
  'share.no-reading': 'No se leyó ninguna altura con la regla.',
  'share.stood': 'Se mantuvo en pie {time}.',
  'share.fell': 'Se cayó después de {time}.',
  'share.comes-confirm': 'Alguien ha visto la construcción real. Eso también entra.',
  'share.comes-judge': 'Ya se valoró. Eso también entra.',
  'share.comes-decide': 'Se fijaron valores o se dieron puntos a mano. Eso también entra.',
  'share.stays-out':
    'Lo que alguien vio, valoró o decidió de él se queda fuera. Solo lo trae un dispositivo en manos de esa persona.',
  'share.group-unknown': 'Esta clase no tiene ningún grupo "{group}".',
  'share.group-choose': '¿De qué grupo es?',
  'share.group-none': 'Elige un grupo',
  'share.other-rules': 'Aquí las reglas de este reto son otras. Los puntos pueden salir distintos.',
  'share.other-kit': 'Aquí el kit es otro. Las piezas pueden tener otras medidas.',
  'share.other-sizes': 'Aquí el grupo midió otras medidas. Lo que se calcula con ellas puede salir distinto.',
  'share.supply-here': 'Las piezas ganadas no entran. Cuenta lo que dice aquí la pantalla Lo ganado.',
  'share.rules-not-told': 'Un archivo no dice sus reglas ni su kit. Comprueba que aquí sean los mismos.',
  'share.here': 'Este intento ya está aquí: es el intento {number}. No cambia nada.',
  'share.beside':
    'Ya hay aquí un intento con este nombre y otro contenido. Se quedan los dos: este entra como un intento más.',
  'share.take': 'Traerlo',
  'share.taken': 'Ya está aquí: es el intento {number}.',
  'share.show': 'Mostrarlo',
  'share.refused': 'No se trajo. No ha cambiado nada.',
  'share.not-read': 'No se leyó {file}.',
  'share.photo-not-opened':
    'Este navegador no puede abrir esta imagen. Guárdala como JPEG o PNG, o trae el intento como archivo.',
  'share.no-code':
    'No se encontró ningún código en esta foto. Hazla otra vez: el código entero con el blanco de alrededor, de frente y nítido.',
  'share.help-save': 'Guarda este intento como archivo, para una memoria USB o cualquier carpeta.',
  'share.help-choose': 'Lee intentos de archivos o fotos. No entra nada hasta que tú lo digas.',
  'share.help-take': 'Pone el intento en esta clase. Lo que ya está aquí se queda como está.',
} as const;
