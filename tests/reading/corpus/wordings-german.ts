import type { Wordings } from "./wordings";

/** Single headers as they stand in German logs and forms, of Germany, Austria and Switzerland. */
export const GERMAN_WORDINGS: Wordings = {
  first: `Erste Ablesung (%); Ablesung 1; 1. Ablesung; Erstablesung; Ablesung Nr. 1; Anfangsablesung; Abl. 1; Messwert 1; Erste Lesung; Stand 1; Ablesung I; 1. Ables. [%]; ablesung_1;
    Ablesung nach dem 1. Rollen; Erster Stand; Ablesewert 1`,
  second: `Zweite Ablesung (%); Ablesung 2; 2. Ablesung; Kontrollablesung; Bestätigungsablesung; Ablesung Nr. 2; Abl. 2; Messwert 2; Zweitablesung; Ablesung II; Ablesung nach erneutem Rollen;
    Wiederholte Ablesung; Ablesung zur Bestätigung; Ablesewert 2`,
  third: `Dritte Ablesung; Ablesung 3; 3. Ablesung; Drittablesung; Abl. 3; Dritte Ablesung (falls nötig); Ablesung III; 3. Ablesung (bei Bedarf)`,
  final: `Endablesung; Ablesung (%); Ablesung am Hals; Ablesung am Gerät; Ablesewert; Endstand; Stabile Ablesung; Ablesung der Skala; Flüssigkeitsstand; Abgelesener Wert`,
  cups: `Messbecher; Becher Wasser; Anzahl Becher; Kalibrierte Becher; Zugegebene Becher; Eichbecher; Anzahl Messbecher; Wasserbecher; Becher (1 %); Zahl der Becher; Becherzahl; Becher zugegeben; Kalibrierbecher`,
  alcohol: `Alkohol (ml); Isopropanol (ml); Alkoholmenge (ml); Isopropylalkohol (l); Alkohol zugegeben (ml); Alkoholzugabe (ml); Alkohol verwendet (l); Menge Alkohol (ml); Volumen Alkohol (ml); Alkoholvolumen [ml];
    alkohol_ml; IPA (ml); Isopropanolmenge (ml); Alkohol 70 % (l); Alkoholverbrauch (ml); Eingefüllter Alkohol (ml)`,
  foam: `Schaum (Teilstriche); Schaumhöhe (Skt.); Schaum im Hals (Teilstriche); Schaumschicht (Skt); Schaumdicke (Teilstriche); Restschaum (Skt.); Blasen (Skt.); Verbleibender Schaum (Skt.); Schaum in Skalenteilen; Schaum [Skt]`,
  settle: `Beruhigungszeit (min); Zeit bis stabil (min); Stabil nach (min); Wartezeit bis stabil (min); Minuten bis stabil; Stabilisierungszeit (min); Zeit bis Ruhe (min); Setzzeit (min); Dauer bis stabil (min);
    Ruhezeit (min); Beruhigung (min); Stand stabil nach (min); Zeit bis zum stabilen Stand (min); Dauer der Beruhigung (min)`,
  packed: `Beton festgesetzt; Beton am Boden haftend; Anhaftender Beton; Beton nicht gelöst; Betonrest im Topf; Beton verdichtet am Boden; Betonreste; Festsitzender Beton; Nicht aufgelöster Beton; Klumpen im Topf;
    Beton noch fest?; Rückstand im Topf; Betonklumpen`,
  "packed reversed": `Topf sauber?; Beton vollständig gelöst?; Boden sauber?; Beton gelöst?; Beton ganz aufgelöst?; Topf leer und sauber?`,
  leak: `Undicht; Leck; Leckage; Undichtigkeit; Wasserverlust; Undicht beim Rollen; Flüssigkeitsverlust; Tropft; Leck am Deckel; Undicht (J/N); Wasseraustritt; Leckstelle`,
  "leak reversed": `Dicht?; Gerät dicht?; Deckel dicht?; Dichtung in Ordnung?; Dichtheit i.O.; Dicht (J/N); Gefäß dicht?; Dichtheit gegeben?`,
  lateAlcohol: `Alkohol nach Nullstellung (ml); Alkohol nach Null (ml); Alkohol nach dem Nullen (ml); Nachträglicher Alkohol (ml); Alkohol später zugegeben (ml); Alkohol nach Nullabgleich (ml); Zusätzlicher Alkohol nach Null (ml)`,
  air: `Luftgehalt (%); Luft (%); LP-Gehalt (%); Luftporengehalt (%); Luftgehalt Frischbeton (%); Luftgehalt, volumetrisch; Ergebnis Luftgehalt; Luftgehalt gesamt; Luftgehalt korrigiert; Gemessener Luftgehalt; % Luft; Luftanteil (%);
    luftgehalt; Luftgehalt angegeben; Luftgehalt [Vol.-%]`,
  low: `Luftgehalt min.; Mindestluftgehalt; Untergrenze Luft; Untere Grenze; Luft min (%); Mindest-LP-Gehalt`,
  high: `Luftgehalt max.; Höchstluftgehalt; Obergrenze Luft; Obere Grenze; Luft max (%); Maximaler Luftgehalt`,
  target: `Soll-Luftgehalt; Sollwert Luft; Luftgehalt Soll (%); Geforderter Luftgehalt; Zielluftgehalt; Luftgehalt gefordert; Vorgabe Luftgehalt`,
  tolerance: `Toleranz (±); Zulässige Toleranz; Tol. ±; Toleranz Luft`,
  water: `Wasser vor Alkohol (l); Anfangswasser (l); Wasser vor dem Alkohol (l)`,
  alcoholStrength: `Alkoholkonzentration (%); Alkoholgehalt (%); Stärke des Alkohols (%)`,
  inversion: `Umdrehzeit (s); Wendezeit (s); Dauer des Wendens (s); Wenden (s); Kopfüberzeit (s)`,
  roll: `Rollzeit (s); Rollen (s); Rolldauer (s); Dauer des Rollens (s)`,
  meter: `Gerät Nr.; Gerätenummer; Messgerät; Prüfgerät; Geräte-Nr.; Seriennummer Gerät; Prüfmittel-Nr.`,
  meterCheck: `Kalibrierdatum; Letzte Kalibrierung; Gerät kalibriert am; Datum der Kalibrierung; Gerät geprüft am`,
  bowlVolume: `Topfvolumen (l); Volumen des Topfes (l); Topfinhalt (l)`,
  start: `Prüfbeginn; Beginn der Prüfung; Prüfung begonnen (Uhrzeit); Beginn der Prüfung (Uhr); Start der Prüfung`,
  sampledFrom: `Probenahmezeit; Uhrzeit der Probenahme; Beginn der Probenahme; Probenahme (Uhrzeit); Zeit der Probenahme; Entnahmezeit; Entnahme (Uhrzeit)`,
  sampledTo: `Ende der Probenahme; Probenahme beendet; Letzte Teilprobe (Uhrzeit)`,
  batched: `Mischzeitpunkt; Beladezeit; Herstellzeit; Uhrzeit der Herstellung; Beladung (Uhrzeit)`,
  discharged: `Entladeende; Ende der Entladung; Entladen (Uhrzeit); Entladung beendet; Uhrzeit Entladeende`,
  revolutions: `Trommelumdrehungen; Umdrehungen; Anzahl Umdrehungen; Mischerumdrehungen`,
  date: `Datum; Prüfdatum; Datum der Prüfung; Betonierdatum; Probenahmedatum; Entnahmedatum; Herstelldatum; Prüftag; Tag der Prüfung; Datum der Probenahme`,
  time: `Uhrzeit; Zeit; Prüfzeit; Uhrzeit der Prüfung; Prüfuhrzeit`,
  sample: `Probe; Probe Nr.; Proben-Nr.; Probennummer; Probenbezeichnung; Prüfung Nr.; Prüfnummer; Labornummer; Versuch Nr.; Proben-ID; Probekennung; Labor-Nr.`,
  load: `Lieferschein; Lieferschein-Nr.; LS-Nr.; Lieferscheinnummer; Lieferung Nr.; Charge Nr.; Ladung; Lieferschein Nr.`,
  mix: `Sorte; Betonsorte; Rezept; Rezeptur; Mischung; Sortennummer; Betonsorte Nr.; Rezept-Nr.; Betonklasse; Mischungsnummer; Sortenverzeichnis-Nr.`,
  method: `Verfahren; Prüfverfahren; Prüfnorm; Norm; Messverfahren; Methode`,
  repeatOf: `Wiederholung von; Wiederholung der Prüfung; Wiederholungsprüfung zu`,
  aggregate: `Gesteinskörnung; Art der Gesteinskörnung; Zuschlag; Zuschlagart; Art des Zuschlags`,
  aggregateSize: `Größtkorn (mm); Dmax (mm); Größtkorn; Korngröße max.; Größtkorndurchmesser (mm); GK (mm); Maximalkorn`,
  aggregateFactor: `Korrekturfaktor Gesteinskörnung; Zuschlagkorrektur (%); Gesteinskorrekturfaktor`,
  density: `Frischbetonrohdichte (kg/m³); Rohdichte (kg/m3); Rohdichte frisch; Dichte Frischbeton; FB-Rohdichte (kg/m3); Rohdichte des Frischbetons (kg/dm³); Frischrohdichte; Dichte (kg/m³)`,
  gravimetricAir: `Luftgehalt gravimetrisch; Luft aus Rohdichte (%); Rechnerischer Luftgehalt aus Rohdichte`,
  densityTarget: `Soll-Rohdichte (kg/m3); Zielrohdichte; Rohdichte Soll; Geforderte Rohdichte`,
  slump: `Setzmaß (mm); Slump (mm); Setzmass (mm); Setzmaß gemessen (mm); Setzmaß [cm]`,
  nominalSlump: `Setzmaß Soll (mm); Soll-Setzmaß; Gefordertes Setzmaß (mm); Zielsetzmaß`,
  concreteTemperature: `Betontemperatur (°C); Temperatur Beton; Frischbetontemperatur; T Beton (°C); Betontemp.; Temp. Frischbeton (°C); FB-Temperatur`,
  airTemperature: `Lufttemperatur (°C); Außentemperatur; Umgebungstemperatur; T Luft (°C); Lufttemp.; Temperatur außen (°C); Aussentemperatur`,
  humidity: `Luftfeuchte (%); Relative Feuchte (%); rel. Luftfeuchte; Luftfeuchtigkeit (%)`,
  wind: `Wind (km/h); Windgeschwindigkeit; Windgeschw. (m/s)`,
  none: `Baustelle; Bauherr; Auftraggeber; Prüfer; Laborant; Bauteil; Bemerkungen; Druckfestigkeit (N/mm²); Würfel Nr.; Ankunft; Abfahrt Werk; Menge (m³); Lieferant; Werk; Zusatzmittel; LP-Topf Druckverfahren (%);
    Mittelwert; Standardabweichung; In Ordnung?; Fahrer; Probenehmer; Wasserzugabe Baustelle (l); Zement (kg); Alter (Tage); Prüfkörper; Ausbreitmaß (cm); Wetter; Achse; w/z-Wert; Trockenrohdichte (kg/m3); Unterschrift; Rechnung Nr.;
    Geprüft von; Erstarrungsbeginn; Ankunft Baustelle; Einbauort; Verdichtungsmaß; Kubikmeter`,
};
