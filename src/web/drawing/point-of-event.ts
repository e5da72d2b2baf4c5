/** Where an event of a pointer happened, in the units of the drawing that holds its target, y up as in the engine. */
export function pointOfEvent(event: PointerEvent): { readonly x: number; readonly y: number } | undefined {
  const svg = (event.currentTarget as SVGElement | null)?.ownerSVGElement;
  const matrix = svg?.getScreenCTM()?.inverse();
  if (matrix === undefined) return undefined;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
  return { x, y: -y };
}
