import type { FigureToSet } from '../../core/index.ts';
import type { Design } from '../design-schema.ts';

/** A design with a figure set in it; everything else stays. Other figures of this program's cures and none else: throws a RangeError on a path that leads nowhere. */
export function applyFigure(design: Design, { path, value }: Pick<FigureToSet, 'path' | 'value'>): Design {
  const [section, ...names] = path.split('.');
  const name = names.join('.');
  if (section === 'parameters' && name !== '') {
    return { ...design, parameters: { ...design.parameters, [name]: value as Design['parameters'][string] } };
  }
  if (section === 'base' && (name === 'looseTenons' || name === 'dowels')) {
    return { ...design, base: { ...design.base, [name]: value } };
  }
  if (section === 'tooling' && name === 'cutter.cuttingLength') {
    const { tooling } = design;
    return {
      ...design,
      tooling: { ...tooling, cutter: { ...tooling.cutter, cuttingLength: value as string } },
    };
  }
  throw new RangeError(`nothing is set at ${path}`);
}
