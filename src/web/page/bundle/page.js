import{R as o}from"./chunk-B2Y3TKEK.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-IFC4BUQS.js"));
