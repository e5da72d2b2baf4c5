/** What a form declares under a name: never what every map inherits, such as `constructor`. */
export function own<T>(map: Readonly<Record<string, T>> | undefined, name: string): T | undefined {
  return map !== undefined && Object.hasOwn(map, name) ? map[name] : undefined;
}
