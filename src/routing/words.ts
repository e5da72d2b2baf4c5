/** A length as findings say it: at most two decimals, none that are zero. */
export function mm(value: number): string {
  return `${trim(value)} mm`;
}

/** An area as findings say it. */
export function mm2(value: number): string {
  return `${trim(value)} mm²`;
}

function trim(value: number): string {
  const text = value.toFixed(2);
  return (text.includes('.') ? text.replace(/\.?0+$/, '') : text).replace(/^-0$/, '0');
}
