// What stands for a shape that is not on the list, where pieces of the list have their drawing.

export const ShapePicture = () => (
  <svg className="trace-shape" viewBox="0 0 48 48" aria-hidden="true" focusable="false">
    <path d="M8 30L14 10L34 8L42 26L28 40Z" />
  </svg>
);
