/** Prints how often each slip behind a wrong result is found in simulated records: `npm run diagnosis`. */
import { measureDiagnosis, scoreTable, SEED } from "../tests/simulation/measure-diagnosis";

console.log(scoreTable(measureDiagnosis(1000, SEED)));
