// A tower beside a ruler, drawn by the same code as the pieces on the shelf.

export default function Tower() {
  return <div className="hero" />;
}
