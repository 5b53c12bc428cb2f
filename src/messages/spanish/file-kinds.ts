import type { fileKindMessages as english } from "../english/file-kinds";
import type { SameSentences } from "../sentence";

/** What a file holds that is no spreadsheet, in a sentence. */
export const fileKindMessages: SameSentences<typeof english> = {
  "holds-pdf": "un documento PDF",
  "holds-picture": "una imagen u otro medio",
  "holds-archive": "un paquete de archivos",
  "holds-program": "un programa",
  "holds-database": "una base de datos",
  "holds-document": "un documento o una presentación",
  "holds-markup": "una página web u otro texto con etiquetas",
  "holds-text": "texto simple",
  "holds-binary": "datos binarios",
};
