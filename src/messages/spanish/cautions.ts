import type { cautionMessages as english } from "../english/cautions";
import type { SameSentences } from "../sentence";

/** What everyone at the test must know, and what the results do not replace ("common practice"). */
export const cautionMessages: SameSentences<typeof english> = {
  "caution-caustic":
    "El concreto fresco es cáustico. Use guantes y protección para los ojos, y enjuáguese la piel de inmediato.",
  "caution-flammable":
    "El alcohol isopropílico es inflamable. Manténgalo lejos de llamas y chispas, y ventile el lugar.",
  "caution-lifting": "El medidor lleno es pesado. Levántelo y ruédelo con cuidado.",
  "caution-deferral":
    "Estos resultados apoyan, y nunca sustituyen, la especificación del proyecto, los reglamentos locales ni el criterio del ingeniero con licencia y del técnico certificado. Donde difieran de esta herramienta, valen ellos.",
};
