import{R as o}from"./chunk-WMCRQAL5.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-UMUX5BAK.js"));
