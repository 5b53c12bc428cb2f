import type { Wordings } from "./wordings";

/** Single headers as they stand in Spanish logs and forms, of Mexico, the Andes, the River Plate and Spain. */
export const SPANISH_WORDINGS: Wordings = {
  first: `Primera lectura (%); Lectura 1; 1a lectura; 1ra. lectura; Lectura inicial; Lect. 1; Lectura No. 1; Lectura inicial del medidor;
    Lectura uno; Nivel inicial en el cuello; Primer nivel; Lectura I; lectura_1; primeraLectura; Lectura tras primer rodado;
    Lectura después de rodar (1a)`,
  second: `Segunda lectura (%); Lectura 2; 2a lectura; 2da. lectura; Lectura de confirmación; Lect. 2; Lectura de comprobación; Lectura II;
    Lectura dos; Segundo nivel; Lectura de verificación; Lectura tras segundo rodado; Lectura repetida; Lectura confirmatoria`,
  third: `Tercera lectura; Lectura 3; 3a lectura; 3ra. lectura; Lect. 3; Tercera lectura (si aplica); Lectura III; Tercera lectura opcional`,
  final: `Lectura final; Lectura del medidor (%); Lectura en el cuello; Lectura del aparato; Lectura; Lectura estable; Lectura de la escala (%);
    Nivel del líquido; Lectura del equipo, %`,
  cups: `Copas de agua; Tazas calibradas; No. de copas; Copas calibradas añadidas; Vasos calibrados; Número de tazas; Copitas de agua; Medidas de agua del 1 %;
    Cantidad de copas; Tazas de agua agregadas; Copas añadidas; Vasos de agua adicionados; num_copas; Copas de 1 %`,
  alcohol: `Alcohol (mL); Alcohol isopropílico (L); Volumen de alcohol, mL; Alcohol usado (L); Alcohol añadido (L); Cantidad de alcohol (mL); Alc. isop. (L);
    Isopropanol (mL); Alcohol agregado, L; Alcohol vertido (mL); Alcohol empleado (L); alcohol_ml; Alcohol al 70 % (L); Alcohol utilizado (pintas);
    Consumo de alcohol (mL); Alcohol isopropílico empleado (mL)`,
  foam: `Espuma (divisiones); Espuma en el cuello (div); Altura de espuma (div); Capa de espuma, div; Burbujas (div); Espuma residual (div); Espuma, divisiones;
    Espesor de espuma (div); Espuma remanente (div); espuma_div`,
  settle: `Tiempo de estabilización (min); Minutos hasta estable; Tiempo hasta nivel estable (min); Estable a los (min); Tiempo de reposo (min);
    Tiempo para estabilizar (min); Minutos para estabilizarse; Estabilización, min; Tiempo de asentamiento del nivel (min); t. estab. (min);
    Tiempo en estabilizarse (min); Reposo hasta lectura estable (min); Se estabilizó en (min)`,
  packed: `Concreto pegado; Concreto compactado en el fondo; Concreto adherido al tazón; Concreto sin disgregar; Hormigón pegado en la base; ¿Quedó concreto en el fondo?;
    Material adherido; Concreto no disperso; Grumos en el tazón; Residuo en la base; Concreto apelmazado; ¿Concreto sin remover?; Hormigón sin deshacer`,
  "packed reversed": `¿Tazón limpio?; ¿Base limpia?; ¿Concreto disgregado?; ¿Se disgregó todo el concreto?; ¿Concreto totalmente suelto?; ¿Fondo limpio?`,
  leak: `Fuga; Fugas; ¿Hubo fuga?; Fuga de agua; Fuga durante el rodado; Pérdida de líquido; Goteo; Escape de agua; Fuga en la junta; Fuga (S/N); Pérdida de agua;
    ¿Goteó el medidor?`,
  "leak reversed": `¿Hermético?; ¿Estanco?; ¿Sello hermético?; ¿Cierre hermético?; ¿Medidor hermético?`,
  lateAlcohol: `Alcohol después del cero (mL); Alcohol añadido después del cero; Alcohol tardío (mL); Alcohol tras el cero (mL); Alcohol adicional después de poner a cero;
    Alcohol agregado luego del cero (mL); Alcohol extra después del cero`,
  air: `Contenido de aire (%); Aire (%); Aire total; Aire volumétrico (%); % de aire; Aire reportado; Contenido de aire volumétrico; Aire final; Aire incluido (%); Aire ocluido (%);
    Resultado de aire; Aire corregido; Aire medido (%); Porcentaje de aire; contenido_aire; Aire fresco (%); Aire informado; Cont. de aire, %`,
  low: `Aire mínimo; Límite inferior de aire; Aire mín. (%); Mínimo especificado de aire; Límite inferior (%); Aire especificado mín.`,
  high: `Aire máximo; Límite superior de aire; Aire máx. (%); Máximo especificado de aire; Límite superior (%); Aire especificado máx.`,
  target: `Aire especificado; Aire de proyecto; Aire objetivo; Aire de diseño (%); Aire requerido; Aire solicitado; Contenido de aire especificado`,
  tolerance: `Tolerancia (±); Tolerancia de aire; Tol. ±; Tolerancia especificada`,
  water: `Agua antes del alcohol (L); Agua inicial (L); Agua añadida antes del alcohol`,
  alcoholStrength: `Concentración del alcohol (%); Pureza del alcohol (%); Graduación del alcohol (%)`,
  inversion: `Tiempo de inversión (s); Tiempo total invertido (s); Inversión, s; Segundos invertido`,
  roll: `Tiempo de rodado (s); Rodado (s); Tiempo rodando (s); Tiempo de rodamiento (s)`,
  meter: `Medidor No.; Medidor; Equipo No.; No. de aparato; Aparato; No. de serie del medidor; Código del equipo; ID del medidor; Medidor de aire No.`,
  meterCheck: `Fecha de calibración; Última calibración; Calibración del medidor; Fecha de verificación del medidor; Medidor calibrado el`,
  bowlVolume: `Volumen del tazón (L); Capacidad del tazón (L); Volumen del recipiente del medidor (L)`,
  start: `Inicio del ensaye; Hora de inicio del ensayo; Inicio de prueba (hora); Hora inicio ensayo; Comienzo del ensayo`,
  sampledFrom: `Hora de muestreo; Hora de toma; Hora de toma de muestra; Inicio de muestreo; Muestreo (hora); Hora muestreo; Primera porción (hora)`,
  sampledTo: `Fin de muestreo; Término de muestreo; Última porción (hora)`,
  batched: `Hora de carga; Hora de dosificación; Hora de fabricación; Hora de mezclado; Hora de amasado; Hora de carga en planta`,
  discharged: `Hora de descarga; Fin de descarga; Término de descarga; Hora de vaciado; Hora fin de descarga`,
  revolutions: `Revoluciones; Vueltas de la olla; Giros del tambor; Revoluciones del trompo; No. de revoluciones`,
  date: `Fecha; Fecha de ensayo; Fecha de colado; Fecha de muestreo; Fecha del ensaye; Fecha de prueba; Fecha de vaciado; Fecha de hormigonado; Fecha toma; Fecha de moldeo`,
  time: `Hora; Hora de ensayo; Hora del ensaye; Hora de prueba; Hora ensayo`,
  sample: `Muestra; No. de muestra; Muestra No.; Ensaye No.; Ensayo N°; Nº de ensayo; Identificación de muestra; Código de muestra; Clave de muestra; Muestra ID; Registro de muestra;
    No. de laboratorio; Toma No.`,
  load: `Remisión; No. de remisión; Albarán; Nº albarán; Guía de despacho; Boleta; Nota de remisión; Vale No.; Guía No.; Remito; N° de remito; Conduce`,
  mix: `Mezcla; Diseño de mezcla; Tipo de concreto; Clase de concreto; Código de mezcla; Designación del hormigón; Clave de mezcla; Dosificación No.; Tipo de hormigón; Fórmula`,
  method: `Método; Método de ensayo; Norma de ensayo; Procedimiento; Método usado`,
  repeatOf: `Repetición de; Repite a; Repetición del ensayo`,
  aggregate: `Tipo de agregado; Agregado grueso; Tipo de árido; Clase de agregado`,
  aggregateSize: `T.M.A. (mm); Tamaño máximo (mm); Tamaño máximo nominal; TMN (pulg); Tamaño máx. de agregado; Tamaño máximo del árido (mm); Tam. máx. agregado (mm)`,
  aggregateFactor: `Factor de corrección del agregado; Corrección por agregado (%); Factor de agregado`,
  density: `Peso volumétrico (kg/m³); Masa unitaria (kg/m3); Densidad fresca (kg/m3); Peso unitario; Densidad del hormigón fresco (kg/m3); P.V. (kg/m3); P.U. (kg/m³); Densidad; Masa volumétrica, kg/m3`,
  gravimetricAir: `Aire gravimétrico (%); Aire por gravimetría; Aire calculado por peso unitario`,
  densityTarget: `Densidad especificada; Peso volumétrico especificado (kg/m3); Densidad objetivo; Peso unitario de diseño`,
  relativeYield: `Rendimiento relativo; Rend. relativo`,
  slump: `Revenimiento (cm); Asentamiento (mm); Asiento (cm); Revenimiento medido (cm); Slump (pulg); Rev. (cm); Cono de Abrams (cm); Revenimiento obtenido (cm); Asentamiento medido; Asiento medido (mm)`,
  nominalSlump: `Revenimiento especificado (cm); Revenimiento de proyecto; Asentamiento de diseño (mm); Revenimiento solicitado (cm); Asiento previsto (cm); Asentamiento nominal`,
  concreteTemperature: `Temp. del concreto (°C); Temperatura del hormigón; Temperatura de la mezcla (°C); T concreto (°C); Temperatura concreto fresco; Temp. conc.; T° hormigón (°C); Temp. mezcla`,
  airTemperature: `Temp. ambiente (°C); Temperatura del aire; T amb. (°C); Temperatura exterior; Temperatura ambiental; T° ambiente; Temp. aire (°C)`,
  humidity: `Humedad relativa (%); H.R. (%); Humedad ambiente (%); Hum. rel.`,
  wind: `Viento (km/h); Velocidad del viento; Vel. viento (m/s)`,
  none: `Obra; Cliente; Contratista; Elemento; Ubicación; Laboratorista; Técnico; Observaciones; Resistencia a 28 días; Cilindros; f'c (kg/cm²); Hora de llegada; Salida de planta;
    Volumen (m³); Metros cúbicos; Proveedor; Planta; Aditivo; Aire por presión (%); Promedio; Desviación estándar; Cumple; Chofer; Muestreado por; Agua añadida en obra (L); Cemento (kg);
    Edad (días); Probetas; Extensibilidad (cm); Clima; Eje; Nivel; Relación a/c; Densidad seca (kg/m3); Firma; Factura; Revisó; Tiempo de fraguado; Hora de salida; Aire, olla a presión`,
};
