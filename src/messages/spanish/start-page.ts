import type { startPageMessages as english } from "../english/start-page";
import type { SameWords } from "../sentence";

/** Sentences of the page with which a copy of the add-in on a server begins. */
export const startPageMessages: SameWords<typeof english> = {
  "manifest-needs-https":
    "Excel carga complementos solo desde direcciones https, y esta página se abrió desde otra. Ponga los archivos en un servidor https y abra esta página allí: entonces hace el manifiesto para esa dirección.",
  "host-is-ready": "Este servidor le responde a Excel como debe.",
  "host-lacks": ({ missing }) =>
    `A este servidor le falta algo que Excel necesita; cosas que faltan: ${missing}. Vea abajo.`,
  "host-not-asked":
    "No se le pudo preguntar al servidor. Compruebe que estén todos los archivos del complemento, y cargue de nuevo esta página.",
  "is-there": "Sí.",
  "is-missing": "Falta.",
  "need-https": {
    what: "La dirección empieza con https.",
    mend: "Active https en el servidor, y abra esta página por su dirección https.",
  },
  "need-functions-for-others": {
    what: "Las páginas de otros sitios, entre ellas las de Excel, pueden leer functions.json.",
    mend: "Haga que el servidor envíe con él el encabezado Access-Control-Allow-Origin: *; sin eso Excel en la web no conoce ninguna de las funciones.",
  },
  "need-functions-are-metadata": {
    what: "functions.json contiene la lista de funciones.",
    mend: "El servidor responde con otra cosa; ponga allí de nuevo todos los archivos, sin cambios.",
  },
  "need-icons-for-others": {
    what: "Las páginas de otros sitios pueden mostrar los iconos.",
    mend: "Haga que el servidor envíe Cross-Origin-Resource-Policy: cross-origin, o no envíe ese encabezado, con la carpeta assets.",
  },
  "need-script-type": {
    what: "functions.js se envía como JavaScript.",
    mend: "Haga que el servidor envíe Content-Type: text/javascript con los archivos que terminan en .js.",
  },
  "need-frame": {
    what: "taskpane.html se puede mostrar dentro de una página de otro sitio, como lo muestra Excel en la web.",
    mend: "Haga que el servidor omita X-Frame-Options, y frame-ancestors en Content-Security-Policy.",
  },
  "need-newest": {
    what: "Los navegadores preguntan por una versión nueva de las páginas.",
    mend: "El servidor deja que los navegadores guarden las páginas más de una hora, así que una versión nueva llega tarde. Haga que envíe Cache-Control: max-age=600.",
  },
};
