/**
 * Records of a CSV file by the grammar of RFC 4180, section 2: CRLF after every record, fields with commas, quotes or line breaks in
 * double quotes, a quote inside doubled. Throws on everything else.
 */
export function readCsv(text: string): readonly (readonly string[])[] {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  while (at < text.length) {
    const field = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/.exec(text.slice(at));
    if (field === null) throw new Error(`not RFC 4180 at ${at}: ${JSON.stringify(text.slice(at, at + 20))}`);
    const [whole, quoted, plain, end] = field;
    record.push(quoted === undefined ? plain! : quoted.replaceAll('""', '"'));
    if (end === '\r\n') {
      records.push(record);
      record = [];
    }
    at += whole.length;
  }
  if (record.length > 0) throw new Error('the last record has no end');
  return records;
}
