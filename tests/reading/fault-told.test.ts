import { faultTold } from "../../src/reading/fault-told";

/*
 * Remarks as crews write them, by what a careful reader makes of each: does it tell of something that voids
 * a test by the method (a leak, foam over two divisions, a level that does not settle, concrete left
 * undisturbed, alcohol added after zeroing, liquid lost)? Common practice.
 */

const TOLD = `
leaked while rolling | slight leak at gasket | Leak - see next | ok except leak | stopper leaks a little
foam > 2 div | too much foam | foam 3 divisions | 3 div foam | heavy foam on top | foam 4 marks | lots of foam
level did not settle | Level kept falling | foam did not break | Foam would not clear | didn't settle | Unstable, still dropping at 6 min | never stabilized | not stable
concrete stuck in bottom of bowl | packed concrete left in base | material still packed
alcohol added after zeroing | added more alcohol | IPA added late
alcohol topped up after zero | 4 oz IPA added after the zero was set | added alcohol after 0
spilled some water | lost water at stopper | water was lost
Fuga en la tapa | fugó por la tapa | mucha espuma | espuma excesiva | espuma 3 divisiones | no se estabilizó | inestable
quedó concreto pegado en el fondo | se agregó más alcohol | alcohol añadido después | se derramó agua
fuite au joint | trop de mousse | mousse 3 divisions | niveau instable | ne se stabilise pas | béton collé au fond
alcool ajouté après | eau renversée
Deckel undicht | viel Schaum | zu viel Schaum | Wert nicht stabil | Beton haftet am Boden
Alkohol nachträglich zugegeben | Wasser verschüttet`;

const NOT_TOLD = `
Repeat with more alcohol | retest, added more alcohol | no leaks | no leak, no foam | Leaks: none | Leak - no | leak = 0 | leak (none) | Leak: ok | leak n/a | leak check ok
checked for leaks | truck leaking oil | pump hose leak | formwork leaking
foam < 1 div | foam 1 div | foam 2 div | slight foam | little foam | foam: none; leak: none | foam stable
settled in 4 min | stable | level stable after 4 min | ground not stable | unsettled weather
truck stuck in traffic | packed in 3 layers | no undisturbed concrete | bowl clean, no packed concrete
no alcohol added after zero | all alcohol in before zero | 48 oz alcohol | IPA 70 % | use more alcohol next time | concrete spilled at chute | diesel spill
sunny | pumped | 2nd truck | none | cyl 1-3 | rodded 25 | retest of S-4 | Deck pour bay 3 | bottom of wall pour
sin fugas | fuga: ninguna | sin espuma | estable | camión con fuga de aceite
pas de fuite | aucune fuite | stable | peu de mousse | keine Leckage | Undichtigkeit: nein | wenig Schaum | dicht`;

const each = (list: string) => list.split(/[|\n]/).map((text) => text.trim());

test.each(each(TOLD).filter(Boolean))("tells of a fault: %s", (remark) => {
  expect(faultTold(remark)).toBe(true);
});

test.each(each(NOT_TOLD).filter(Boolean))("tells of none: %s", (remark) => {
  expect(faultTold(remark)).toBe(false);
});

test("a remark as long as a cell holds is read at once", () => {
  const long = `foam ${"leak of the truck, alcohol foam ".repeat(1000)}`;
  expect(faultTold(long)).toBe(false);
});
