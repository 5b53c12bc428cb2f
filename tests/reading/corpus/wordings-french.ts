import type { Wordings } from "./wordings";

/** Single headers as they stand in French logs and forms, of Quebec, France and Belgium. */
export const FRENCH_WORDINGS: Wordings = {
  first: `Première lecture (%); Lecture 1; 1re lecture; 1ère lecture; Lecture initiale; Lect. 1; Lecture no 1; Lecture n° 1; Lecture initiale de l'appareil; Lecture I;
    Premier niveau; Niveau initial; lecture_1; Lecture après premier roulage; Première lecture du niveau`,
  second: `Deuxième lecture (%); Lecture 2; 2e lecture; Seconde lecture; Lecture de confirmation; Lect. 2; 2ème lecture; Lecture de vérification; Lecture II; Deuxième niveau;
    Lecture après second roulage; Lecture répétée; Lecture de contrôle`,
  third: `Troisième lecture; Lecture 3; 3e lecture; 3ème lecture; Lect. 3; Troisième lecture (au besoin); Lecture III; Troisième lecture si nécessaire`,
  final: `Lecture finale; Lecture de l'appareil (%); Lecture au col; Lecture; Lecture stable; Lecture de l'aéromètre; Niveau du liquide; Lecture sur l'échelle (%)`,
  cups: `Tasses calibrées; Nombre de tasses; Coupes d'eau; Godets d'eau; Tasses d'eau ajoutées; Nb de godets; Gobelets; Coupelles d'eau; Tasses étalonnées; Mesures d'eau de 1 %; Tasses ajoutées;
    Nbre de tasses; nb_tasses; Godets calibrés`,
  alcohol: `Alcool (mL); Alcool isopropylique (L); Volume d'alcool (mL); Quantité d'alcool (L); Alcool ajouté (mL); Alcool utilisé (L); Isopropanol (mL); Alcool employé (L); Alcool versé (mL); Alc. (mL);
    alcool_ml; Alcool à 70 % (L); Alcool isopropylique ajouté (mL); Alcool consommé (L); Dose d'alcool (mL)`,
  foam: `Mousse (divisions); Mousse dans le col (div.); Hauteur de mousse (div.); Couche de mousse (div); Bulles (div); Mousse résiduelle (div); Épaisseur de mousse (div.); Mousse restante (div.); Mousse, graduations`,
  settle: `Temps de stabilisation (min); Stabilisation (min); Minutes jusqu'à stabilisation; Durée de stabilisation (min); Stable après (min); Temps de repos (min); Délai de stabilisation (min);
    Niveau stable après (min); Temps pour stabiliser (min); Durée avant niveau stable (min); Temps d'attente avant lecture stable (min)`,
  packed: `Béton collé au fond; Béton resté dans le bol; Béton tassé; Béton non dispersé; Béton adhérent; Résidu au fond du bol; Béton compacté dans la cuve; Béton non désagrégé; Grumeaux dans le bol; Béton collé (O/N);
    Mottes de béton; Béton resté au fond ?`,
  "packed reversed": `Bol propre ?; Béton désagrégé ?; Cuve propre ?; Béton entièrement dispersé ?; Fond propre ?; Tout le béton est-il délité ?`,
  leak: `Fuite; Fuites; Fuite observée; Fuite d'eau; Fuite au joint; Perte de liquide; Perte d'eau; Fuite pendant le roulage; Écoulement au joint; Suintement; Fuite (O/N); Y a-t-il fuite ?`,
  "leak reversed": `Étanche ?; Étanchéité OK ?; Joint étanche ?; Appareil étanche ?; Couvercle étanche ?`,
  lateAlcohol: `Alcool après mise à zéro (mL); Alcool ajouté après le zéro; Alcool tardif (mL); Alcool supplémentaire après zéro (mL); Alcool ajouté après mise à zéro; Alcool après le zéro (mL)`,
  air: `Teneur en air (%); Air (%); Air total; Air occlus (%); Air entraîné (%); % d'air; Teneur en air volumétrique; Air rapporté; Air final; Air mesuré (%); Résultat air (%); Teneur en air corrigée; Air corrigé;
    teneur_air; Pourcentage d'air; Volume d'air (%)`,
  low: `Air minimum; Air min. (%); Limite inférieure; Teneur en air minimale; Limite inf. (%); Air minimal spécifié`,
  high: `Air maximum; Air max. (%); Limite supérieure; Teneur en air maximale; Limite sup. (%); Air maximal spécifié`,
  target: `Air spécifié; Air visé (%); Teneur en air visée; Air demandé; Teneur en air spécifiée; Air exigé; Air prescrit`,
  tolerance: `Tolérance (±); Tolérance air; Tol. ±; Tolérance admise`,
  water: `Eau avant alcool (L); Eau initiale (L); Eau ajoutée avant l'alcool`,
  alcoholStrength: `Concentration de l'alcool (%); Titre de l'alcool (%); Pureté de l'alcool (%)`,
  inversion: `Temps de retournement (s); Durée des retournements (s); Inversion (s); Temps à l'envers (s)`,
  roll: `Temps de roulage (s); Roulage (s); Durée de roulage (s)`,
  meter: `Appareil no; N° d'appareil; Aéromètre; Appareil; N° de série de l'appareil; Aéromètre no; Équipement no; No d'instrument`,
  meterCheck: `Date d'étalonnage; Dernier étalonnage; Étalonnage de l'appareil; Date de vérification de l'appareil; Appareil étalonné le`,
  bowlVolume: `Volume du bol (L); Volume de la cuve (L); Capacité du bol (L)`,
  start: `Début de l'essai; Heure de début de l'essai; Début essai (heure); Heure début d'essai`,
  sampledFrom: `Heure d'échantillonnage; Heure de prélèvement; Heure du prélèvement; Début de prélèvement; Prélevé à (heure); Début de l'échantillonnage; Première prise (heure)`,
  sampledTo: `Fin de prélèvement; Fin d'échantillonnage; Dernière prise (heure)`,
  batched: `Heure de malaxage; Heure de gâchage; Heure de chargement; Heure de fabrication; Heure de charge`,
  discharged: `Heure de déchargement; Fin de déchargement; Fin de vidange; Heure de vidange; Heure fin de déchargement`,
  revolutions: `Nombre de tours; Tours de cuve; Révolutions; Tours du malaxeur; Nb de tours de toupie`,
  date: `Date; Date d'essai; Date de l'essai; Date de coulée; Date de prélèvement; Date du prélèvement; Date de bétonnage; Date de coulage; Date essai`,
  time: `Heure; Heure de l'essai; Heure d'essai; Heure essai`,
  sample: `Échantillon; No d'échantillon; N° échantillon; Échantillon no; Essai n°; No d'essai; Prélèvement n°; Numéro d'échantillon; Réf. échantillon; Identification de l'échantillon; No labo; Code échantillon`,
  load: `Bon de livraison; N° BL; BL; No de bon; Billet de livraison; Bon no; N° de bon de livraison; Chargement no; Billet no; Livraison no`,
  mix: `Formule; Formule de béton; Mélange; No de mélange; Type de béton; Classe de béton; Code mélange; Désignation du béton; Code formule; Recette`,
  method: `Méthode; Méthode d'essai; Norme d'essai; Mode opératoire; Méthode utilisée`,
  repeatOf: `Reprise de; Reprise de l'essai; Répétition de`,
  aggregate: `Type de granulat; Gros granulat; Nature du granulat; Granulats`,
  aggregateSize: `Dmax (mm); Grosseur maximale (mm); Diamètre max. du granulat; Dimension maximale des granulats; D max granulat (mm); Taille max. granulat (mm); Grosseur nominale maximale`,
  aggregateFactor: `Facteur de correction du granulat; Correction granulat (%); Facteur granulat`,
  density: `Masse volumique (kg/m³); Masse volumique du béton frais; Densité (kg/m3); Densité fraîche; MV (kg/m³); Masse vol. (kg/m3); Densité du béton frais (kg/m3); Masse volumique fraîche (kg/m3)`,
  gravimetricAir: `Air gravimétrique (%); Air par gravimétrie; Air calculé par masse volumique`,
  densityTarget: `Masse volumique spécifiée; Densité visée (kg/m3); Masse volumique visée (kg/m3)`,
  relativeYield: `Rendement relatif; Rend. relatif`,
  slump: `Affaissement (mm); Affaissement mesuré (mm); Slump (mm); Affaiss. (mm); Affaissement au cône (mm); Affaissement obtenu (mm); Cône d'Abrams (mm)`,
  nominalSlump: `Affaissement spécifié (mm); Affaissement visé (mm); Affaissement demandé (mm); Affaissement prévu; Affaissement exigé`,
  concreteTemperature: `Température du béton (°C); Temp. béton; T° béton; Temp. du béton frais; T béton (°C); Température béton frais`,
  airTemperature: `Température de l'air (°C); Temp. ambiante; T° air; Température ambiante (°C); Temp. extérieure; T ext. (°C); Température extérieure`,
  humidity: `Humidité relative (%); HR (%); Humidité (%); Hum. rel. (%)`,
  wind: `Vent (km/h); Vitesse du vent; Vitesse vent (m/s)`,
  none: `Chantier; Client; Entrepreneur; Projet; Élément; Localisation; Technicien; Remarques; Résistance à 28 jours (MPa); Cylindres; Heure d'arrivée; Départ centrale; Volume (m³); Fournisseur;
    Usine; Adjuvant; Air par pression (%); Moyenne; Écart type; Conforme; Chauffeur; Prélevé par; Eau ajoutée au chantier (L); Ciment (kg); Âge (jours); Éprouvettes; Étalement (mm); Météo; Axe; Rapport e/c;
    Masse volumique sèche (kg/m3); Signature; Facture; Vérifié par; Temps de prise; Heure de départ; Appareil à pression, air (%); Étalement au cône (mm); Lieu de prélèvement`,
};
