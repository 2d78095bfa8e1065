import{R as o}from"./chunk-6KEALQGP.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-T5BJV2BA.js"));
