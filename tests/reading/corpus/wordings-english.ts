import type { Wordings } from "./wordings";

/** Single headers as they stand in logs, cards, forms and exports of the trade. */
export const ENGLISH_WORDINGS: Wordings = {
  first: `Meter reading no. 1; Rdg #1 (%); Initial meter rdg; Neck reading 1; 1st level on neck; Liquid level 1;
    Reading after 1st roll; First air reading; Volumetric reading 1; Air meter reading 1; Initial level;
    Preliminary reading; Scale reading 1; Reading I; First stable reading; Read 1; Liquid level reading #1;
    Reading before re-roll; first_rdg_pct; meterReading1; Rdg. (1); Reading no. one; First meter level, %;
    Reading after initial rolling; Initial reading after stabilization`,
  second: `Reading after re-rolling; Reading after second rolling; Reading II; Rdg #2; Verification reading;
    Repeat reading; Check reading; Second stable reading; Reading after repeat roll; 2nd level; Re-roll reading;
    Confirming rdg (%); Second neck reading; readingTwo; meter_rdg_2; Reading after 2nd roll, %; Second level in neck`,
  third: `Reading III; Third reading (if needed); Reading 3 if required; Rdg. 3 (if 1 & 2 differ); 3rd level;
    Reading after third roll; third_meter_rdg; Optional third reading; Additional reading 3`,
  final: `Neck reading (%); Meter rdg; Level read; Liquid level in neck; Final meter level; Final neck rdg;
    Meter reading, % of volume; Observed reading; Reading on neck; Scale reading; Level of liquid, %; Stable reading`,
  cups: `Cal. cups H2O; Cups of H2O; # of 1% cups; Calibrated cups used; Water cups added (no.); Measuring cups;
    Extra cups; Brass cups; Cupfuls; Additional water (cups); Water added, cups; No. calib. cups; Cups req'd;
    1% water additions; Cups needed to reach scale; cups_h2o; numCups; Count of cups; Water increments of 1%;
    Number of calibrated cups of water added; Cups (1% ea.); Cups of water to raise level`,
  alcohol: `Iso. alcohol (oz); Isopropyl (pt); Alcohol qty, oz; 70% IPA (mL); Alcohol charged (pt); Alc. vol. used, L;
    Total alcohol (pt); Alcohol dispensed (oz); Volume IPA (mL); IPA used, oz; Pints alcohol; Oz of alc.;
    Rubbing alcohol (oz); Amt. of isopropyl, pt; Isopropanol, mL; Alcohol in meter, oz; isopropyl_alcohol_oz;
    Isopropyl alcohol quantity (pints); Alc. used [pt]; Alcohol poured, oz; IPA charge, pt; Alcohol (70 %), oz`,
  foam: `Foam on top (div.); Foam depth, div; Foam thickness (divisions); Foam (divs); Bubbles (div.); Froth, div;
    Foam at reading, div; Foam layer thickness (div); Residual foam (div); Foam remaining, divisions; Foam height in neck (div);
    Divisions of foam; Foam in neck; foamDiv; Foam band (div); Foam ring, divisions; Foam amount (divs)`,
  settle: `Time to stabilise (min); Minutes to stable reading; Liquid stable after (min); Time until level steady (min);
    Stabilisation period, min; Time for level to settle; Elapsed time to stable (min); Time to equilibrium (min);
    Min. to stabilize; Time for foam to clear (min); Standing time before reading (min); Rest time to stable level (min);
    settle_minutes; timeToStableMin; Stable in (min); Duration until stable (min); Level steady after, min;
    Time for air to rise (min); Minutes until stable`,
  packed: `Unmixed concrete in bowl (Y/N); Conc. stuck to bowl; Concrete caked in base; Residue in bowl; Packed material (Y/N);
    Undispersed material found; Concrete remaining at bottom of bowl; Concrete adhering to bowl; Any lumps?; Clumps in bowl;
    Undisturbed material in base; Packed conc. found?; Stuck material in base; Unbroken concrete in bowl; packedConcrete;
    Mortar stuck in bowl; Concrete lodged in bowl; Concrete still packed in base`,
  "packed reversed": `Bowl emptied clean?; Bottom of bowl clean?; All concrete dispersed?; Concrete fully broken up?;
    Concrete freed from base?; Sample completely dispersed?; Concrete washed out of bowl?;
    Base clean?; Concrete dislodged?`,
  leak: `Leakage observed; Leak during roll; Leaked?; Loss of water; Drips; Liquid escaped; Gasket leak; Seal leak; Leaks seen (Y/N);
    Water leaking; Leakage at clamp; leak_found; Meter leaking?; Leak while rolling; Lost liquid during rolling; Leak at seal?;
    Liquid lost (Y/N)`,
  "leak reversed": `Water tight?; Seal tight?; Meter tight?; Leak free (Y/N); Watertight (Y/N); Gasket sealed?; Seal held?`,
  lateAlcohol: `Alcohol after zero (oz); Additional alcohol after zeroing (oz); IPA added after zero mark set (oz); Late IPA (oz);
    More alcohol added after zero?; Alcohol added after zero line set; Alcohol added after rolling (oz);
    Extra alcohol after zeroing, pt; Alcohol added later (mL); alcohol_after_zero_oz; Further alcohol after zeroing`,
  air: `Final air (%); Air content of concrete; Vol. air %; Total air; Net air; Air (volumetric); Fresh air content;
    Reported air, nearest 1/4%; Corrected air content; Air content as reported; Percent air; Air test result; Plastic air content;
    airContentPct; Air content by volume; % air, volumetric; Air content by C173; Volumetric air content (%); Rptd. air; Result, % air`,
  low: `Air spec min; Min. air req'd; Lower air limit; Lower spec (%); Specified min. air; Air min.; Minimum specified air; air_min_pct;
    Lower limit, % air; Spec. range low; Allowable air, min`,
  high: `Air spec max; Max. air allowed; Upper air limit; Upper spec (%); Specified max. air; Maximum specified air; air_max_pct;
    Upper limit, % air; Spec. range high; Allowable air, max`,
  target: `Air requirement; Spec. air (%); Air target %; Specified air content; Design air, %; Req'd air; Ordered air; Nominal air;
    Contract air content; Specified % air`,
  tolerance: `Air tol. (±); Permitted tolerance; Allowed tolerance; ± tol.; Tolerance on air; +/- %; Spec. tolerance`,
  water: `Water before alcohol (pt); Initial water (oz); Water added before alcohol; Water placed first (pt); First water charge (pt)`,
  alcoholStrength: `IPA strength (%); Alcohol concentration, %; Strength of isopropyl; % isopropyl; Alcohol purity (%)`,
  inversion: `Inversion time (s); Time inverting, sec; Total time inverted (s); Seconds inverted; Inverting, total s; Inverted for (s);
    Duration of inversion (s)`,
  longestInversion: `Longest inversion, s; Longest time upside down (s); Max. single inversion (s); Longest single inversion (s)`,
  roll: `Rolling time (s); Time rolled, sec; Roll duration (s); Seconds rolled; Rolling, s`,
  meter: `Meter ID; Air meter #; Roller meter no.; Meter serial no.; Meter used; Equipment no.; Device ID; Apparatus no.; meter_id;
    Meter asset tag; Instrument no.`,
  meterCheck: `Meter cal. date; Last calibrated; Meter calibrated on; Meter standardized (date); Date of last calibration; Cal. date;
    Meter last checked; Calibration date of meter`,
  bowlVolume: `Bowl volume (ft3); Volume of bowl (cu ft); Bowl capacity (L); Measuring bowl volume`,
  cupVolume: `Cup volume (mL); Volume of calibrated cup, mL; Cal. cup capacity`,
  start: `Test started; Start of air test; Time test began; Air test start time; Test start (hh:mm); testStartTime`,
  sampledFrom: `Sampled at (time); Time sampled; Sampling began; First portion taken at; Sample time; Sampling start time; Time of sampling;
    sample_time`,
  sampledTo: `Sampling ended; Last portion taken at; Sampling complete (time); Sampling finished at; End of sampling`,
  batched: `Batch time; Time batched; Time of batching; Batched at; Time loaded; Batching time (hh:mm); Time of mixing start`,
  discharged: `Discharge complete; Time unloaded; Discharge finish time; End discharge; Time of discharge; Unloading finished at`,
  revolutions: `Drum revs; Total drum revolutions; Mixer revs; Revs at discharge; Rev. count; Number of drum revolutions`,
  date: `Date of test; Test date; Date tested; Date cast; Pour date; Date placed; Date sampled; testDate; Casting date; Placement date;
    Date (m/d/y); Date of placement; Day of test`,
  time: `Time of test; Test time; Time (24 h); Hour; Clock time; time_of_test; Time of day`,
  sample: `Sample ID; Sample no.; Specimen no.; Test no.; Lab no.; Set no.; Field sample #; sample_id; Sample ref.; Sample name; Lab ID;
    Lab sample number; Test identification; Sample label; Test ref.; Specimen ID`,
  load: `Ticket no.; Load no.; Truck ticket #; Delivery ticket; Docket no.; Batch ticket no.; ticketNo; Load ID; Delivery note no.; Truck / ticket`,
  mix: `Mix code; Mix design no.; Mix ID; Concrete mix; Mix name; Class of concrete; Concrete grade; Product code; Mix description;
    Mixture no.; mix_design_id; Concrete type`,
  method: `Test method; Air method; Method used; Method of air test; Air test type; Standard used; Test procedure`,
  repeatOf: `Repeat of; Retest of; Repeat test of sample; Re-test of no.; Replaces test`,
  checkOf: `Check test of; Check test for sample; Check on sample no.`,
  aggregate: `Aggregate type; Coarse aggregate type; Kind of aggregate; Coarse agg. type; Aggregate kind; Stone type`,
  aggregateSize: `Max. agg. size (in); Nominal max size (in.); NMAS; Aggregate top size, in; Max. aggregate (mm); Coarse agg. size; Agg. nom. max. size`,
  aggregateFactor: `Agg. correction factor; Aggregate corr. (%); ACF, %; Aggregate factor`,
  density: `Unit wt. (pcf); Fresh density (kg/m³); Fresh unit weight, lb/ft3; Wet density (pcf); Plastic unit weight; U.W. (pcf); Density, kg/m3;
    unit_weight_pcf; Density of fresh concrete (pcf); Unit mass (kg/m3)`,
  theoreticalDensity: `Theoretical density (pcf); Air-free unit weight; Air-free density, pcf; Theor. unit wt.`,
  gravimetricAir: `Gravimetric air (%); Air by gravimetric; Air from unit weight (%); Calculated air (grav.); Grav. air`,
  densityTarget: `Target unit weight (pcf); Specified density (pcf); Design unit wt. (pcf); Spec'd unit weight`,
  densityLow: `Min. unit weight (pcf); Minimum density (pcf); Unit wt. min; Unit weight lower limit`,
  densityHigh: `Max. unit weight (pcf); Maximum density (pcf); Unit wt. max; Unit weight upper limit`,
  relativeYield: `Relative yield; Rel. yield; Yield, relative`,
  measureVolume: `Measure volume (ft3); Volume of measure (cu ft); Unit weight bucket volume (cf); Density pot volume (L)`,
  slump: `Slump (in); Slump, mm; Measured slump; Slump result (in.); slump_in; Slump at site (in); Slump test result`,
  nominalSlump: `Specified slump; Target slump (in); Design slump, mm; Slump ordered; Spec. slump (in); Slump required`,
  concreteTemperature: `Concrete temp. (°F); Conc temp F; Temp. of concrete; Mix temp. (F); Concrete temperature, °C; conc_temp_f; Fresh concrete temp; Temp. of mix`,
  airTemperature: `Ambient temp. (°F); Air temp; Outside temp. (F); Ambient °F; Weather temp. (F); air_temp_f; Temp., air; Temp. ambient; Ambient air temperature`,
  humidity: `RH (%); Rel. humidity; Relative humidity, %; Humidity %; Ambient RH`,
  wind: `Wind (mph); Wind speed; Wind velocity, mph; wind_mph`,
  none: `Project; Contractor; Inspector; Tested by; Technician; Cylinder nos.; Compressive strength (psi); 7-day break; Location; Placement location;
    Remarks; Arrival time; Time left plant; Air temp. in lab cure room; w/c; w/cm ratio; AEA dose (oz/cwt);
    Cement (lb); Cubic yards; Yards placed; Load size (cy); Weather; Sky; Slump flow (in); J-ring; VSI; Pressure air (%);
    Type B air (%); Air, C231; Hardened air (%); Average air; Running average of 5; Std. dev.; Pass/Fail; Accepted?; Truck driver; Sampled by;
    Station; Elevation; Hydrometer; Set of cylinders; Beam ID; Oven-dry density (pcf); Equilibrium density;
    Set time, initial (h); Water content (lb/yd3); Slump loss (in); Row; Email; Time on site; Wait time (min); Lab tech; Supplier; Plant; Invoice`,
};
