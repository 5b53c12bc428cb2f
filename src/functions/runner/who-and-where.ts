/**
 * Headers under which people name who tested and where the concrete was batched, in English, Spanish, French
 * and German: ordinary trade usage ("common practice"), our own selection. No rule reads these columns.
 */
const HEADERS: Readonly<Record<string, RegExp>> = {
  technician:
    /^(?:(?:field |testing |air )?tech(?:nician)?(?: name)?|tester|tested by|test by|inspector|operator|t[eé]cnico|laboratorista|ensay[oó]|ensayado por|probado por|technicien(?:ne)?|essai par|pr[uü]fer(?:in)?|gepr[uü]ft von)$/,
  plant:
    /^(?:(?:batch |concrete )?plant(?: name| no\.?)?|planta(?: de concreto| dosificadora)?|centrale(?: à béton)?|(?:misch)?werk)$/,
};

/**
 * The column of the technicians or of the plants.
 *
 * @param headers Plain: in small letters, without spaces to spare.
 * @returns `undefined` where none, or more than one, is headed so.
 */
export function whoOrWhere(name: string, headers: readonly string[]): number | undefined {
  const headed = HEADERS[name];
  const found = headers.flatMap((header, i) => (headed?.test(header) ? [i] : []));
  return found.length === 1 ? found[0] : undefined;
}
