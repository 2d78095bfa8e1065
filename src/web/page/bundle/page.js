import{Q as o}from"./chunk-JNIUTSVL.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-VYFIITTF.js"));
