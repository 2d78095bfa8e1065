import{A as df,B as cf,C as en,D as pf,E as mf,F as ff,G as st,H as vt,I as hf,J as gf,K as ae,L as wn,M as ms,N as we,O as Ru,P as _f,Q as $f,S as bf,T as wf,U as yf,a as Km,b as Vm,c as C,d as y,e as Qm,f as Ro,g as tn,h as Hr,i as Et,j as di,k as Gm,l as Ym,m as Zm,n as Xm,o as tf,p as ps,q as ef,r as nf,s as qr,t as of,u as sf,v as rf,w as af,x as lf,y as jn,z as uf}from"./chunk-6KEALQGP.js";var Ur=globalThis,Jr=Ur.ShadowRoot&&(Ur.ShadyCSS===void 0||Ur.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,kf=Symbol(),vf=new WeakMap,zr=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==kf)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Jr&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=vf.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&vf.set(n,e))}return e}toString(){return this.cssText}},xf=t=>new zr(typeof t=="string"?t:t+"",void 0,kf);var Tf=(t,e)=>{if(Jr)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Ur.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},Su=Jr?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return xf(n)})(t):t;var{is:Fk,defineProperty:Bk,getOwnPropertyDescriptor:Ck,getOwnPropertyNames:Lk,getOwnPropertySymbols:Ik,getPrototypeOf:Wk}=Object,Kr=globalThis,Rf=Kr.trustedTypes,Ek=Rf?Rf.emptyScript:"",Nk=Kr.reactiveElementPolyfillSupport,fs=(t,e)=>t,Au={toAttribute(t,e){switch(e){case Boolean:t=t?Ek:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},Af=(t,e)=>!Fk(t,e),Sf={attribute:!0,type:String,converter:Au,reflect:!1,useDefault:!1,hasChanged:Af};Symbol.metadata??=Symbol("metadata"),Kr.litPropertyMetadata??=new WeakMap;var yn=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=Sf){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&Bk(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=Ck(this.prototype,e)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let d=i?.call(this);s?.call(this,a),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Sf}static _$Ei(){if(this.hasOwnProperty(fs("elementProperties")))return;let e=Wk(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(fs("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(fs("properties"))){let n=this.properties,o=[...Lk(n),...Ik(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(Su(i))}else e!==void 0&&n.push(Su(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Tf(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:Au).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:Au;this._$Em=i;let d=a.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let a=this.constructor;if(i===!1&&(s=this[e]),o??=a.getPropertyOptions(e),!((o.hasChanged??Af)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??n??this[e]),s!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,d=this[i];a!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};yn.elementStyles=[],yn.shadowRootOptions={mode:"open"},yn[fs("elementProperties")]=new Map,yn[fs("finalized")]=new Map,Nk?.({ReactiveElement:yn}),(Kr.reactiveElementVersions??=[]).push("2.1.2");var Pu=globalThis,Df=t=>t,Vr=Pu.trustedTypes,Pf=Vr?Vr.createPolicy("lit-html",{createHTML:t=>t}):void 0,Ou="$lit$",vn=`lit$${Math.random().toFixed(9).slice(2)}$`,Mu="?"+vn,jk=`<${Mu}>`,Do=document,gs=()=>Do.createComment(""),_s=t=>t===null||typeof t!="object"&&typeof t!="function",Fu=Array.isArray,Lf=t=>Fu(t)||typeof t?.[Symbol.iterator]=="function",Du=`[ 	
\f\r]`,hs=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Of=/-->/g,Mf=/>/g,So=RegExp(`>|${Du}(?:([^\\s"'>=/]+)(${Du}*=${Du}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Ff=/'/g,Bf=/"/g,If=/^(?:script|style|textarea|title)$/i,Bu=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=Bu(1),S=Bu(2),EB=Bu(3),Nt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Cf=new WeakMap,Ao=Do.createTreeWalker(Do,129);function Wf(t,e){if(!Fu(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return Pf!==void 0?Pf.createHTML(e):e}var Ef=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",a=hs;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,b=0;for(;b<c.length&&(a.lastIndex=b,m=a.exec(c),m!==null);)b=a.lastIndex,a===hs?m[1]==="!--"?a=Of:m[1]!==void 0?a=Mf:m[2]!==void 0?(If.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=So):m[3]!==void 0&&(a=So):a===So?m[0]===">"?(a=i??hs,_=-1):m[1]===void 0?_=-2:(_=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?So:m[3]==='"'?Bf:Ff):a===Bf||a===Ff?a=So:a===Of||a===Mf?a=hs:(a=So,i=void 0);let w=a===So&&t[d+1].startsWith("/>")?" ":"";s+=a===hs?c+jk:_>=0?(o.push(p),c.slice(0,_)+Ou+c.slice(_)+vn+w):c+vn+(_===-2?d:w)}return[Wf(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},$s=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,d=e.length-1,c=this.parts,[p,m]=Ef(e,n);if(this.el=t.createElement(p,o),Ao.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Ao.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Ou)){let b=m[a++],w=i.getAttribute(_).split(vn),x=/([.?@])?(.*)/.exec(b);c.push({type:1,index:s,name:x[2],strings:w,ctor:x[1]==="."?Gr:x[1]==="?"?Yr:x[1]==="@"?Zr:Oo}),i.removeAttribute(_)}else _.startsWith(vn)&&(c.push({type:6,index:s}),i.removeAttribute(_));if(If.test(i.tagName)){let _=i.textContent.split(vn),b=_.length-1;if(b>0){i.textContent=Vr?Vr.emptyScript:"";for(let w=0;w<b;w++)i.append(_[w],gs()),Ao.nextNode(),c.push({type:2,index:++s});i.append(_[b],gs())}}}else if(i.nodeType===8)if(i.data===Mu)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(vn,_+1))!==-1;)c.push({type:7,index:s}),_+=vn.length-1}s++}}static createElement(e,n){let o=Do.createElement("template");return o.innerHTML=e,o}};function Po(t,e,n=t,o){if(e===Nt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=_s(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=Po(t,i._$AS(t,e.values),i,o)),e}var Qr=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??Do).importNode(n,!0);Ao.currentNode=i;let s=Ao.nextNode(),a=0,d=0,c=o[0];for(;c!==void 0;){if(a===c.index){let p;c.type===2?p=new ci(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new Xr(s,this,e)),this._$AV.push(p),c=o[++d]}a!==c?.index&&(s=Ao.nextNode(),a++)}return Ao.currentNode=Do,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},ci=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=Po(this,e,n),_s(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Nt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Lf(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&_s(this._$AH)?this._$AA.nextSibling.data=e:this.T(Do.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=$s.createElement(Wf(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Qr(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(e){let n=Cf.get(e.strings);return n===void 0&&Cf.set(e.strings,n=new $s(e)),n}k(e){Fu(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(gs()),this.O(gs()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=Df(e).nextSibling;Df(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},Oo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)e=Po(this,e,n,0),a=!_s(e)||e!==this._$AH&&e!==Nt,a&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=Po(this,d[o+c],n,c),p===Nt&&(p=this._$AH[c]),a||=!_s(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}a&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Gr=class extends Oo{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Yr=class extends Oo{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},Zr=class extends Oo{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=Po(this,e,n,0)??u)===Nt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Xr=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){Po(this,e)}},Nf={M:Ou,P:vn,A:Mu,C:1,L:Ef,R:Qr,D:Lf,V:Po,I:ci,H:Oo,N:Yr,U:Zr,B:Gr,F:Xr},Hk=Pu.litHtmlPolyfillSupport;Hk?.($s,ci),(Pu.litHtmlVersions??=[]).push("3.3.3");var ye=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new ci(e.insertBefore(gs(),s),s,void 0,n??{})}return i._$AI(t),i};var Cu=globalThis,pi=class extends yn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=ye(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Nt}};pi._$litElement$=!0,pi.finalized=!0,Cu.litElementHydrateSupport?.({LitElement:pi});var qk=Cu.litElementPolyfillSupport;qk?.({LitElement:pi});(Cu.litElementVersions??=[]).push("4.2.2");var Hf=()=>{},Lu=!1,ta=!1,Wu=!1;function qf(t){Hf=t}function V(){Lu||(Lu=!0,queueMicrotask(()=>{Lu=!1,ta?Wu=!0:Uf()}))}function Uf(){Wu=!1,Hf()}var Uk=1500,Iu=0;function jf(){clearTimeout(Iu),ta=!1,Wu&&Uf()}function zf(){let t=({target:e})=>{!(e instanceof Element)||e.closest("[role=slider], select, canvas")||(ta=!0,clearTimeout(Iu),Iu=window.setTimeout(jf,Uk))};addEventListener("pointerdown",t,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>setTimeout(jf),!0);addEventListener("click",()=>ta=!1,!0)}function Jf(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var N=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of Jf(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function F(t,e,n){return Eu(t,Jf(e),n)}function Eu(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=Eu(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},a=Eu(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var Kf=t=>Ro("GET",`/api/bench?run=${encodeURIComponent(t)}`),Vf=t=>tn("/api/bench/tick",t),Qf=t=>tn("/api/bench/weigh_cup",t),Gf=(t,e)=>tn("/api/bench/anew",{run:t,batch:e}),Yf=(t,e)=>tn("/api/bench/finish",{run:t,batch:e});var lt=(t,e)=>({name:t,label:e,unit:"mm"}),Hn=lt("height","Floor to brim"),ea={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Nu={block:{words:"Box, loaf or slab",measures:[lt("length","Longer side at the brim"),lt("width","Shorter side"),Hn,ea,{...lt("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[lt("floor_diameter","Across the floor"),lt("brim_diameter","Across the brim"),Hn]},fluted_cup:{words:"Fluted cup",measures:[lt("floor_diameter","Across the floor"),lt("brim_diameter","Across the brim"),Hn,{name:"flutes",label:"Flutes",unit:"",count:!0},lt("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},lt("across_flats","Across the flats"),Hn,ea]},dome:{words:"Bowl",measures:[lt("diameter","Across the brim"),Hn]},half_ball:{words:"Half ball",measures:[lt("diameter","Across the brim")]},ball:{words:"Ball",measures:[lt("diameter","Across")]},half_ring:{words:"Half ring",measures:[lt("centre_diameter","Ring, middle to middle of the tube"),lt("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[lt("outer_floor_diameter","Cup, across the floor"),lt("outer_brim_diameter","Cup, across the brim"),lt("post_floor_diameter","Post, at its foot"),lt("post_brim_diameter","Post, at its top"),Hn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[lt("height","Height"),lt("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Hn,ea],points:{columns:[lt("x","From the left"),lt("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[lt("side","Straight edge, tip to round"),Hn,ea]}},Zf=Object.fromEntries(Object.entries(Nu).map(([t,{words:e}])=>[t,e])),mi=t=>Nu[t]?.measures??[],qn=t=>Nu[t]?.points;var ju=(t,e)=>String($(t,e)??"").trim(),bs=t=>ju(t,"/shape/kind"),Ce=(t,e)=>$(t,`/${e}`)!==void 0,Hu=t=>["body","skin"].includes(ju(t,"/mesh/role"));function le(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function Xf(t,e){return(qn(bs(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function ws(t){return le(t,"/shape/points").flatMap((e,n)=>Xf(t,e).every(Boolean)?[n]:[])}function na(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return le(t,"/shape/points").flatMap((n,o)=>e(Xf(t,n))?[o]:[])}var qu=t=>le(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function th(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(a=>$(t,`${o}/${a}`));e=F(e,o,s)};return qn(bs(t))&&n("/shape/points",ws(t)),n("/water/weighings",qu(t)),e}function oa(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?ws(t):qu(t);return`${n}/${s[Number(o)]??o}${i}`}function ys(t){let e=[],n=i=>ju(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(Ce(t,"shape")){let i=bs(t);o(i!=="","the shape");for(let{name:a,label:d,optional:c}of mi(i))o(c||n(`/shape/${a}`),d.toLowerCase());let s=qn(i);s&&o(ws(t).length>=s.least,`${s.least} points at least`)}if(Ce(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(qu(t).length>0,"a weighing of water")}return!Hu(t)&&!Ce(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var Xt=t=>t.slice(0,t.lastIndexOf("/")+1),ue=t=>t.slice(t.lastIndexOf("/")+1),kn=(t,e)=>{let n=Xt(t);return n?zk(n+e):e};function zk(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Le(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function fi(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(a=>a.file===s))return s}}var Jk=["mould","formula","run","file","own_fats","own_tips"];function Uu(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?Uu(o,i):Jk.includes(n)?[i]:[]})}function zu(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...Uu(t)])[n,o]=[F(n,i,void 0),F(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Ju(t,e){let n=["/id",...Uu(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?F(i,s,$(e,s)):i,o)}var Mo={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?ue(e):Le(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},Fo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>Le(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Bo={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?ue(e):Le(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Ku=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>ue(o),written:o=>o,is_begun:()=>!0}),vs=Ku("studio","studios","name"),nn=Ku("fats","fats"),Un=Ku("tips","tips","title"),te={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>Le(String(t.name),".json"),written:t=>({...th(t),name:String(t.name??"").trim()}),is_begun:t=>Ce(t,"shape")||Ce(t,"mesh")};var eh={},nh={kind:Mo,id:"",file:"",version:null,shipped:!1,now:eh,saved:eh,unanswered:[]},jt={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:nh,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},stock:{forms:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(Qk()),folded:new Set,units:Kk(),announcement:""},l=jt;function Kk(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Vu=t=>`numbers ${String(t.now.id??t.file)}`,Vk=t=>({numbers:localStorage.getItem(Vu(t))??void 0,figure:""});function ks(t){f({quote_wish:{...jt.quote_wish,...t}});let{numbers:e}=jt.quote_wish;e?.trim()?localStorage.setItem(Vu(jt.run),e):localStorage.removeItem(Vu(jt.run))}var oh="set-up ";function Qk(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function Gk(){let t=[...jt.open].filter(e=>e.startsWith(oh));localStorage.setItem("parts",JSON.stringify(t))}function f(t){Object.assign(jt,t),V()}var P=t=>f({announcement:t});function v(t,e){Object.assign(t,e),V()}function xn(t,e){let{[t]:n,...o}=jt.formulas;f({formulas:e?{...o,[t]:e}:o})}function Ct(t,e){let n=new Set(jt[t]);n.delete(e)||n.add(e),f({[t]:n}),e.startsWith(oh)&&Gk()}function hi(t=nh){f({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:Vk(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function ut(t){jt.open.has(t)||f({open:new Set(jt.open).add(t)})}function Co({list:t,called:e},n,o={}){if(!jt.files)return;let i=jt.files[t].findIndex(d=>d.file===n),s={...i<0?{}:jt.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},a=jt.files[t].filter(d=>d.file!==n);a.splice(i<0?a.length:i,0,s),f({files:{...jt.files,[t]:a}})}var Yk=1e4,Qu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Qu);var ia=[],gi=()=>`bench ${l.files?.folder??""}`;function de(){try{return[...JSON.parse(localStorage.getItem(gi())??"[]"),...ia]}catch{return ia}}function Gu(t){try{t.length?localStorage.setItem(gi(),JSON.stringify(t)):localStorage.removeItem(gi()),ia=[]}catch{ia=t}}var Zk=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function ih(t){let e={...t,id:crypto.randomUUID(),tab:Qu,at:Date.now()};Gu([...de().filter(n=>!Zk(n,e)),e])}var sa=t=>Gu(de().filter(e=>!t(e))),sh=(t,e)=>Gu(de().map(n=>n.run===t?{...n,run:e}:n)),Yu=()=>de().find(t=>t.tab===Qu||Date.now()-t.at>Yk);var ft=["pour","pipe","apart"],kt=["studio","own_fats","own_tips"],ra=t=>kt.includes(t);var Zu=t=>[...new Set(t.flatMap(e=>l.formulas[e]??[]))],Xu=()=>kt.flatMap(t=>l.beside[t]??[]),rh=t=>t.filter(e=>e.theirs),Tn=t=>rh([...Zu(t==="apart"?["apart"]:["pour","pipe"]),...Xu()])[0],aa=()=>[l.run,...Zu(ft),...Xu()].filter(t=>t.is_taken&&!t.theirs),la=()=>rh([l.run,...Zu(ft),...Xu()]);var xs=()=>l.formulas.apart?"apart":"run",ah=t=>f({dangers:{...l.dangers,[xs()]:t}});function td(t){let e=t.cautions.filter(n=>n.severity==="danger");ah(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function lh(t){t.lye_heavy&&ah([{text:C(t),is_of_heat:!1}])}var uh={};function Ie(t,e){(uh[t]??=[]).push(e)}function St(t,e){for(let n of uh[t]??[])n(e)}var Ts=new Map,We=t=>{Ts.set(t,void 0)},zn=(t,e)=>{Ts.set(t,e)};function dh(t,e){if(!Ts.has(t))return!1;let n=Ts.get(t);return n===void 0&&Ts.set(t,e),n===void 0||n===e}async function ve({kind:t,name:e,text:n,from:o,goes_on:i,about_to:s,is_own:a}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:w=[]}=l.files??{},x=fi(e,[...d,...c,...p,...m,..._,...b,...w]);s?.(x);let G=await Xk({file:x,version:null,text:n,from:o,goes_on:i});if(Co(t,x,vt(G.there.text)??{}),G.is_new||a?.(G.there))return G.there}}async function Xk(t){try{We(t.file);let e=await di(t);return zn(e.file,e.version),{is_new:!0,there:e}}catch(e){if(!(e instanceof y)||e.status!==409)throw e;return zn(t.file,null),{is_new:!1,there:e.answer}}}var ua=t=>`unsaved ${t.name} ${l.files?.folder??""} `;function Lo({kind:t,id:e,file:n,version:o,shipped:i,now:s},a){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:st(s),copy:a};localStorage.setItem(ua(t)+e,JSON.stringify(d))}catch{}}function ed(t,e){try{return JSON.parse(localStorage.getItem(ua(t)+e)??"null")??void 0}catch{return}}var Jn=(t,e)=>localStorage.removeItem(ua(t)+e),ch=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function da(t){let e=ua(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>ed(t,o)??[])}var tx=300,X=t=>t.now!==t.saved;function Io(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Pt(t,e,n=e){let o=await wf(e),i=ex(t,JSON.parse(o.text),o.shipped),s=ed(t,n),a=s?.copy&&o.shipped?await nx(t,s,i):void 0;if(a)return Jn(t,n),Pt(t,a);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&ox(p,s,o),p}var ex=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function nx(t,e,n){if(!l.files?.[t.list].some(s=>s.file===e.copy))return;let o=vt(e.text),i=vt((await Et(e.copy)).text);if(!(!o||!i||st(o)===st(n)))return zu(t.written(o),i)?e.copy:void 0}function ox(t,e,n){let o=vt(e.text);if(!o||st(o)===st(t.now))return Jn(t.kind,t.id);v(t,{now:o}),!(e.version===n.version||n.shipped)&&(v(t,{version:e.version}),bh(t,n))}function Ot(t,e){let n=t.now;v(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Lo(t),St("edited",{file:t,before:n})}var ph=new WeakMap,nd=async t=>ph.get(t),on=t=>mh(t,()=>ix(t)),Kn=t=>mh(t,()=>t.shipped?fh(t,hh):Promise.resolve());function mh(t,e){let n=nd(t).then(e);return ph.set(t,n.catch(()=>{})),n}async function ix(t){!X(t)||t.theirs||await fh(t,t.shipped||!t.file?hh:gh)}async function fh(t,e){v(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof y&&v(t,{failed:C(n.complaint)}),n}}async function hh(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),a=await ve({kind:e,name:e.new_name(t),text:st(s),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>Lo(t,m),is_own:({text:m})=>i!==void 0&&zu(s,vt(m)??{})}),d=JSON.parse(a.text),c=Ju(s,d),p=t.now===o?d:c(t.now);Jn(e,n),v(t,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:d}),X(t)&&Lo(t),i!==void 0&&St("copied",{file:t,from:i,renamed:c})}async function gh(t){let{version:e,now:n}=t,o=st(t.kind.written(n));v(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{We(t.file);let i=await di({file:t.file,version:e,text:o});zn(t.file,i.version),ca(t,n,i.version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;zn(t.file,e),_h(t,i.answer),X(t)&&!t.theirs&&await gh(t)}}function ca(t,e,n){v(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),X(t)?Lo(t):Jn(t.kind,t.id),Co(t.kind,t.file,e)}function _h(t,{version:e,text:n}){if(n===st(t.kind.written(t.now)))return ca(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(v(t,{unanswered:[]}),o)return v(t,{version:e,saved:void 0,theirs:void 0});let i=X(t)||t.theirs?void 0:vt(n);i?sx(t,i,e):bh(t,{version:e,text:n})}function sx(t,e,n){St("giving_way",{file:t}),v(t,{set_aside:t.now,is_taken:!0,now:e}),ca(t,e,n),P(`${t.file} was changed outside this page, and stands here as it is now.`),St("gave_way",{file:t})}var $h=t=>v(t,{set_aside:void 0,is_taken:void 0});function bh(t,{version:e,text:n}){v(t,{theirs:{version:e,text:n}}),Lo(t),P(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),St("conflict",{file:t})}function wh(t){if(!t.theirs)return;let e=vt(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return v(t,{failed:n})}St("giving_way",{file:t}),v(t,{set_aside:t.now,now:e}),ca(t,e,t.theirs.version),St("gave_way",{file:t})}function yh(t){t.theirs&&(v(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Lo(t),St("unwritten",{file:t}))}var Wo=({theirs:t})=>t?.text===null;function vh(t){Wo(t)&&(Jn(t.kind,t.id),v(t,{saved:t.now,theirs:void 0,failed:void 0}),P(`${t.file} stays deleted.`),St("left_deleted",{file:t}))}function kh(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;f({typed:void 0}),Ot(t,e),v(t,{set_aside:o?void 0:n})}var xh=t=>(t.theirs??t).version;function Th(t,e){v(t,{id:e,file:e}),St("renamed",{file:t,renamed:n=>n})}async function Rh(t){let{version:e,text:n}=await Et(t.file),o=vt(n);if(!o||t.theirs||e===t.version)return;let i=Ju(t.now,o);if(X(t))return v(t,{version:e,now:i(t.now),saved:o});v(t,{version:e,now:o,saved:o}),St("renamed",{file:t,renamed:i})}var Sh=t=>t.shipped||!t.file?[]:[[t.file,xh(t)]];async function od(t,e,n,o){let i=t.file,s=()=>xh(t)===e&&t.file===i;if(!s()||(await nd(t),!s()))return!1;o(),await id();let a=await rx(i,n);return await nd(t),s()&&(_h(t,a),X(t)&&!t.theirs&&St("unwritten",{file:t})),!0}async function rx(t,e){let n=await e(t);return n===null?{version:n,text:null}:Et(t)}var id=()=>new Promise(t=>setTimeout(t,tx));var ax=400,lx=2e3,rd=new WeakMap;function Dh(t,e){clearTimeout(rd.get(t)),rd.set(t,window.setTimeout(()=>{sn(t)},e))}var Vn=(t=l.run)=>Dh(t,ax),ux=t=>t===l.run||t===l.order?.open;async function sn(t=l.run){clearTimeout(rd.get(t));try{await on(t),X(t)&&!t.theirs&&ux(t)&&Vn(t)}catch(e){if(!(e instanceof y))throw e;e.may_pass&&Dh(t,lx)}}async function Ee(){for(let t of[l.run,l.order?.open])t?.file&&X(t)&&await sn(t)}var Ah=Promise.resolve(),sd=0;function rn(){if(!sd&&!dx().length)return;++sd;let t=Ah.then(cx).finally(()=>--sd);return Ah=t.catch(()=>{}),t}var dx=()=>[...ft.map(t=>l.formulas[t]),...kt.map(t=>l.beside[t])].filter(t=>t!==void 0&&X(t)&&!t.theirs);async function cx(){for(let t of ft){let e=l.formulas[t];!e||!X(e)||e.theirs||(e.shipped&&t!=="apart"&&await Kn(l.run),await on(e))}for(let t of kt){let e=l.beside[t];e&&X(e)&&!e.theirs&&await on(e)}}var Ne=t=>kn(l.run.file,t);function ee(t,e){let n=Ne(t);return e?.some(o=>o.file===n)?n:t}function Ph(t){let e=l.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=ee(String(n?.mould??""),l.files?.moulds);return{file:fi("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...px(e)}}}function px(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}function Mt(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}var Qn=({lines:t})=>Array.isArray(t)?t:[];function Rn(t){let e=Qn(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var ke=new Map,Rs=new Set,mx={changed:{},unreadable:[]},Eo=()=>new Set([...ft.flatMap(t=>l.formulas[t]??[]),...kt.flatMap(t=>l.beside[t]??[])]);function _i(){let t=hx(),e=new Set([...Eo()].map(({file:o})=>o));for(let o of ke.keys())!t.has(o)&&!e.has(o)&&ke.delete(o);for(let o of Rs)t.has(o)||Rs.delete(o);let n=[...t].filter(o=>!ke.has(o));return n.length?fx(n):void 0}async function fx(t){for(let[e,n]of await Oh(t))ke.has(e)||ke.set(e,n)}async function Oh(t){let e=t.filter(o=>!Rs.has(o)),n=e.length?await ps(new Map(e.map(o=>[o,null]))):mx;return dd(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var ld=async t=>(await Oh([t])).get(t)??null,ud=()=>new Map([...ke].filter(([t])=>!Rs.has(t)));function hx(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(Ne(o)),o.includes("..")||t.add(o))},n=l.run.now;t.add(Ne("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Eo()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Xt(o)+s).add(s)}e($(l.beside.studio?.now,"/own_tips"));for(let o of gx())t.add(o);for(let o of kt)t.delete(l.beside[o]?.file??"");return t}function gx(){let{open:t}=l.order??{},e=new Set(t?Qn(t.now).map(({run:p})=>kn(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:s=[],tips:a=[]}=l.files??{},d=[...n,...o,...i,...s,...a].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(kn(t.file,"studio.json")),e.delete(l.run.file),e}function Mh(t,{changed:e}){let n=Object.keys(e).filter(o=>ke.has(o)&&ke.get(o)===t.get(o));for(let o of n)ke.set(o,e[o]);return n}var dd=t=>t.forEach(e=>Rs.add(e));function Fh(){return[...Eo()].flatMap(({file:t,version:e})=>{let n=ke.get(t)??e;return ke.delete(t),n===e?[]:[t]})}var Bh=0,No=()=>Bh;function cd(t){++Bh;for(let{file:e}of Eo())t.includes(e)&&ad.add(e);f({is_old:!0,changed_beside:Ch(l.changed_beside,t)})}var ad=new Set,Ch=(t,e)=>[...new Set([...t,...e])];function Lh(){if(!l.changed_beside.length)return;let t=l.changed_beside.filter(e=>!ad.has(e)&&!dh(e,ke.get(e)??null));ad.clear(),f({changed_beside:[]}),t.length&&(f({taken_in:{files:Ch(l.taken_in?.files??[],t),since:Date.now()}}),P(pd()))}function pd(){let{files:t=[]}=l.taken_in??{};if(!t.length)return"";let[e,n,o]=t.length===1?["was","it","it is"]:["were","them","they are"];return`${Mt(t)} ${e} changed outside this page: the figures are of ${n} as ${o} now.`}var _x=5e3;function Ih(){l.taken_in&&Date.now()-l.taken_in.since>_x&&f({taken_in:void 0})}var $x=1e3,bx=450,pa=!1,jo=!1,md=0;function pt(){f({is_old:!0}),pa?jo=!0:$i()}async function $i(){if(pa){jo=!0;return}pa=!0,Wh(!1);try{do jo=!1,await wx();while(jo)}finally{pa=!1,Wh(!0)}}async function Nh(){let{run:t}=l,e={file:t.file,run:t.now},n=await yf(e)?.catch(()=>{});!n||t!==l.run||l.plan||ch()||(f({plan:n,planned:e}),td(n))}var Wh=t=>{document.documentElement.dataset.settled=String(t)};function Eh(){let{run:t}=l,{apart:e}=l.formulas,{file:n,now:o}=t;return()=>{let i=t===l.run&&(n===t.file||o===t.now);return e===l.formulas.apart&&(e!==void 0||i)}}async function wx(){let t=Eh();try{let e=rn();e&&await e;let n=_i();n&&await n,t=Eh();let{apart:o}=l.formulas;if(Tn(o?"apart":"run"))return f({is_old:!0});let i=No(),s=o?Ph(o.file):{file:l.run.file,run:l.run.now},a=await qr(s);if(window.clearTimeout(md),!t())return void(jo=!0);f({plan:a,planned:s,complaint:void 0}),td(a);let d=i===No();f({is_old:jo||!d}),d&&Lh()}catch(e){if(!(e instanceof y))throw e;if(!t())return void(jo=!0);yx(e)}}function yx(t){f({is_old:!0}),window.clearTimeout(md);let e=()=>{f({complaint:t.complaint}),lh(t.complaint)};l.complaint||!l.plan?e():md=window.setTimeout(e,bx),t.may_pass&&window.setTimeout(pt,$x)}var jh=2e3,ce=t=>f({bench:{...l.bench,...t}}),vx=()=>ce({acts:de()});addEventListener("storage",({key:t})=>{t===gi()&&vx()});function ma(){let{file:t}=l.run;!t||l.bench.run===t||(f({bench:{run:t,batches:[],complaints:[],acts:de()}}),Sn().then(gd))}function Hh(t){let{file:e}=l.run;sh(t,e),l.bench.run===t&&ce({run:e,acts:de()}),l.bench.run===e&&Sn()}function qh(){let{run:t,version:e}=l.bench;return e===void 0||t!==l.run.file?void 0:{run:t,version:e}}var Ss=0;async function Sn(){let{run:t}=l.bench,e=Ss;try{let n=await Kf(t);if(t!==l.bench.run)return;if(e!==Ss)return await Sn();Uh(n)}catch(n){if(!(n instanceof y))throw n;if(t!==l.bench.run)return;ce({failed:C(n.complaint)}),zh(n)&&setTimeout(()=>l.bench.failed!==void 0&&void Sn(),jh)}}var Uh=({batches:t,version:e,complaints:n=[]})=>ce({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),zh=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),Gn=t=>l.bench.batches.find(e=>e.batch===t),hd=t=>l.bench.acts.filter(({run:e,batch:n})=>e===l.bench.run&&n===t),Yn=t=>hd(t).length>0;function Zn(t,e){let n=hd(t).find(i=>i.key===e),o=Gn(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Ho(t){let e=hd(t).find(n=>n.reading!==void 0);return(e?e.reading:Gn(t)?.weigh_cup)??""}function Jh(t,e,n){let{run:o}=l.bench,s=Gn(t)!==void 0||!l.planned?void 0:st(l.planned.run);ih({run:o,batch:t,seen:e,text:s,...n}),ce({acts:de(),chosen:t,told:void 0}),gd()}var Kh=(t,e,n,o)=>Jh(t,e,{key:n,done:o}),Vh=(t,e,n)=>Jh(t,e,{reading:n||null}),fd=!1;async function gd(){if(!fd){fd=!0;try{await navigator.locks.request(gi(),kx)}finally{fd=!1}de().length&&setTimeout(()=>{gd()},jh)}}async function kx(){for(let t=Yu();t;t=Yu())if(!await xx(t))return}async function xx(t){let{id:e}=t;try{let n=await Tx(t);return++Ss,sa(o=>o.id===e),Rx(n,t.run),!0}catch(n){if(!(n instanceof y))throw n;return zh(n)?(ce({unsent:C(n.complaint)}),!1):(await Sx(t,n),!0)}}function Tx({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:a}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?Vf({...d,key:i,done:s??!1}):Qf({...d,reading:a??null})}function Rx(t,e){let n=de();if(e!==l.bench.run)return ce({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,a)=>s.batch-a.batch);ce({acts:n,batches:i,unsent:void 0})}async function Sx(t,{complaint:e}){++Ss,sa(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${C(e)}.`;ce({acts:de(),unsent:void 0,told:{batch:t.batch,words:n}}),P(n),pt(),await Sn()}async function As(t){let{run:e}=l.bench;await Qh(t,async()=>{let n=await Gf(e,t);return sa(o=>o.run===e&&o.batch===t),n})}var _d=t=>Qh(t,()=>Yf(l.bench.run,t));async function Qh(t,e){let{run:n}=l.bench;try{let o=await e();if(++Ss,n!==l.bench.run)return;Uh(o),ce({acts:de(),told:void 0,chosen:t})}catch(o){if(!(o instanceof y))throw o;ce({told:{batch:t,words:C(o.complaint)}})}}var Gh=t=>ce({chosen:t,told:void 0}),Yh=()=>ce({told:void 0});var Ax=300,Dx=1200,fa="",Zh=0;function Ds(){let t={run:{file:l.run,now:l.run.now}};for(let e of ft){let n=l.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of kt){let n=l.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function qo(t=""){let e=performance.now();t&&t===fa&&e-Zh<=Dx&&l.past.length||$d(Ds()),f({future:[]}),fa=t,Zh=e}var $d=t=>f({past:[...l.past,t].slice(-Ax)});function Xn(t){$d(Xh(Ds(),t,()=>t.saved??{}))}function Xh(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function bd(t,e){let n=o=>o.map(i=>Xh(i,t,e));f({past:n(l.past),future:n(l.future)})}function Ps(){let t=l.past.at(-1);t&&(f({past:l.past.slice(0,-1),future:[...l.future,Ds()]}),tg(t,"Undone"))}function wd(){let t=l.future.at(-1);t&&(f({past:[...l.past,Ds()],future:l.future.slice(0,-1)}),tg(t,"Redone"))}function tg(t,e){fa="",f({typed:void 0});for(let n of[...kt,...ft,"run"])Px(n,t);P(e)}function Px(t,e){let n=e[t];if(ra(t))return Ox(t,n);let o=t==="run"?n?.file===l.run:l.formulas[t]!==void 0;!n||!o||(t!=="run"&&xn(t,n.file),n.file.now!==n.now&&Ot(n.file,n.now))}function Ox(t,e){e&&e.file===l.beside[t]&&e.file.now!==e.now&&Ot(e.file,e.now)}var bi=t=>t===l.run||ft.some(e=>l.formulas[e]===t)||kt.some(e=>l.beside[e]===t);Ie("giving_way",({file:t})=>{bi(t)&&(fa="",$d(Ds()),f({typed:void 0}))});for(let t of["copied","renamed"])Ie(t,({file:e,renamed:n})=>bd(e,n));var Mx=1200,yd="",eg=0;function wi(t,e=""){let n=performance.now(),o=e&&e===yd&&n-eg<=Mx&&t.past.length;v(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[yd,eg]=[e,n]}function ha(t){let e=t.past.at(-1);e&&(v(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),ng(t,e,"Undone"))}function ga(t){let e=t.future.at(-1);e&&(v(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),ng(t,e,"Redone"))}function ng({open:t},e,n){yd="",f({typed:void 0}),Ot(t,e),P(n)}function to(t){return t==="run"?l.run:t==="order"?l.order?.open:ra(t)?l.beside[t]:l.formulas[t]}var Fx=t=>to(t)?.now,g=(t,e)=>$(Fx(t),e),O=(t,e)=>String(g(t,e)??"");function et(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function ht(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function og(t,e){t==="order"&&l.order?wi(l.order,e):qo(e===void 0?"":`${t} ${e}`)}function tt(t,e,n){let o=to(t);!o||$(o.now,e)===n||(og(t,e),Ot(o,F(o.now,e,n)))}function ig(t,e){let n=to(t);n&&(og(t),f({typed:void 0}),Ot(n,e(n.now)))}function je(t){qo(),f({typed:void 0});for(let[e,n]of t){let o=to(e);o&&Ot(o,n(o.now))}}var kd=(t,e)=>{let{[t]:n,...o}=l.beside;f({beside:e?{...o,[t]:e}:o})};function _a(t){for(let e of kt)l.beside[e]===t&&kd(e,void 0)}async function Bx(t,e){try{return await Pt(t,e)}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function eo(t,e,n,o=()=>!0){let i=()=>l.beside[t]?.file===n?l.beside[t]:void 0;if(i())return i();let s=await Bx(e,n);return i()||!o()?i():(kd(t,s),s&&X(s)&&(Xn(s),St("unwritten",{file:s})),s?.theirs&&St("conflict",{file:s}),s)}var vd=()=>Ne("studio.json");async function yi(t=!1){let e=vd(),n=(l.files?.studios??[]).some(o=>o.file===e);l.beside.studio?.file!==e&&(n||t?await eo("studio",vs,e,()=>e===vd()):kd("studio",void 0))}async function $a(){l.run.shipped&&await Kn(l.run);let t=vd();await eo("studio",vs,t)||(await Cx(t),await eo("studio",vs,t))}async function Cx(t){try{We(t);let{version:e}=await di({file:t,version:null,text:st({schema:"brimwright.studio/1"})});zn(t,e)}catch(e){if(!(e instanceof y)||e.status!==409)throw e}Co(vs,t)}var sg=(t,e)=>Xt(t.file)+e;async function Lx(t){try{return vt((await Et(t)).text)!==void 0}catch(e){if(!(e instanceof y))throw e;return!1}}async function ba(t){let e=l.formulas[t];if(!e)return;e.shipped&&await Kn(e);let n=String($(e.now,"/own_fats")??"");if(n){let a=sg(e,n);return eo("own_fats",nn,await Lx(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&Xt(a.file)===Xt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await Td(nn,sg(e,"my.fats.json"),i);return tt(t,"/own_fats",ue(s)),eo("own_fats",nn,s)}async function xd(){l.run.shipped&&await Kn(l.run);let t="/pipe/beads/own_tips",n=String($(l.run.now,t)??"")||String($(l.beside.studio?.now,"/own_tips")??"");if(n)return eo("own_tips",Un,Ne(n));let o=Xt(l.run.file),i=(l.files?.tips??[]).find(d=>!d.shipped&&Xt(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await Td(Un,`${o}my.tips.json`,s);return l.beside.studio?tt("studio","/own_tips",ue(a)):tt("run",t,ue(a)),eo("own_tips",Un,a)}async function Os(t,e){await eo(t===nn?"own_fats":"own_tips",t,e)&&f({held_open:e})}function no(){let{view:t,held_open:e,beside:n}=l,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function wa(t,e){let n=t===nn;await Os(t,await Td(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function Td(t,e,n){let{file:o}=await ve({kind:t,name:e,text:st(n)});return Co(t,o),o}function rg(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(ue(e));for(let i of ft)t===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&tt(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===l.beside.own_tips&&n(l.run.now,o)&&tt("run",o,t.file)}var Uo=[],vi=[],Ms=()=>Uo.at(-1),Sd=()=>vi.at(-1);function ka(t){Uo=[...Uo,t],vi=[],f({list_told:t.words}),P(t.words)}async function lg(){let t=Ms();t&&(await t.undo(),Uo=Uo.slice(0,-1),vi=[...vi,t],f({list_told:""}),P("Undone"),await xe())}async function ug(){let t=Sd();t&&(await t.redo(),vi=vi.slice(0,-1),Uo=[...Uo,t],f({list_told:t.words}),P("Redone"),await xe())}async function xe(){let[t,e]=await Promise.all([Hr(),Xm()]);f({files:t,removed:e})}async function dg(t,e){let{$schema:n,...o}=JSON.parse((await Et(e.file)).text),i=`${e.name||ki(e.file)}, copy`,s={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},a=t.called?t.new_name(Io(t,s)):Le(i,Ad(e.file)),{file:d}=await ve({kind:t,name:a,text:st(s),from:e.file});await xe();let c="";return ka({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await ya(d,!0),redo:()=>va(d,c)}),d}var Ad=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",ki=t=>ue(t).slice(0,-Ad(t).length||void 0),cg=(t,e)=>Xt(t)+e+Ad(t),ag=t=>[l.run,l.order?.open,...ft.map(e=>l.formulas[e]),...kt.map(e=>l.beside[e])].find(e=>e?.file===t);async function pg(t,e,n){let o={name:e.name,note:e.note,stem:ki(e.file)};await Rd(t,e.file,n),await xe();let i=cg(e.file,n.stem);ka({words:`Changed ${n.name||i}.`,undo:()=>Rd(t,i,o),redo:()=>Rd(t,e.file,n)})}async function Rd(t,e,{name:n,note:o,stem:i}){let s=ag(e),a=s??await Pt(t,e),{note:d,...c}=a.now,p={...c,...o&&{note:o}},m=t.called?F(p,`/${t.called}`,n||void 0):p;if(st(m)!==st(a.now)&&(s&&bi(s)&&qo(),s===l.order?.open&&l.order&&wi(l.order),Ot(a,m),await on(a),a.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let _=cg(e,i);if(_===e)return;[e,_].forEach(We);let{renamed_in:b}=await Gm(e,_);b.forEach(We),s&&Th(s,_);for(let w of b){let x=ag(w);x&&await Rh(x)}}async function ya(t,e){We(t);let{removed:n}=await Ym(t,e);l.run.file===t&&hi(),l.order?.open.file===t&&f({order:void 0});let o=kt.map(i=>l.beside[i]).find(i=>i?.file===t);return o&&_a(o),n}function va(t,e){return We(t),Zm(e)}async function mg(t,e){let n=await ya(t.file,e);await xe(),ka({words:`Removed ${t.name||t.file}.`,undo:()=>va(t.file,n),redo:async()=>n=await ya(t.file,!0)})}async function fg({removed:t,file:e,name:n}){await va(e,t),await xe();let o="";ka({words:`${n||e} is back.`,undo:async()=>o=await ya(e,!0),redo:()=>va(e,o)})}async function hg({removed:t,file:e,name:n}){f({removed:await tf(t),list_told:""}),P(`${n||e} is deleted for good.`)}var gg=0;function xt(){let t=++gg;return()=>t===gg}function _g(t){let e=$(l.run.now,`/${t}/formula`);return typeof e=="string"&&e?ee(e,l.files?.formulas):void 0}async function oo(){await Promise.all(["pour","pipe"].map(Ix))}async function Ix(t){let e=_g(t),n=()=>e!==void 0&&l.formulas[t]?.file===e;if(n()||(xn(t,$g(e)),e===void 0||n()))return;let o=await Wx(e);if(!o||_g(t)!==e||n())return;let i=$g(e);xn(t,i??o),!i&&(X(o)&&(Xn(o),St("unwritten",{file:o})),o.theirs&&St("conflict",{file:o}))}var $g=t=>ft.map(e=>l.formulas[e]).find(e=>e&&e.file===t),Dd=new Map;function Wx(t){let e=Dd.get(t)??Pt(Bo,t).catch(Ex);return Dd.set(t,e),e.finally(()=>Dd.delete(t))}function Ex(t){if(!(t instanceof y||t instanceof SyntaxError))throw t}var Fs=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function xi(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function wg(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],w=3*c[p+(_+1)%3],x=d[b+i]-e,G=d[w+i]-e;if(x>0==G>0)continue;let Wt=x/(x-G),To=[1e3*(d[b]+Wt*(d[w]-d[b])),1e3*s*(d[b+o]+Wt*(d[w+o]-d[b+o]))];x>0?m.push(To):m.unshift(To)}m.length===2&&a.push([m[0],m[1]])}return a}function yg(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],a=n.get(e(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(e(a[1]))?.shift();s.length>2&&o.push(s)}return o}function Bs(t){let e=t.positions,[n,o,i,s,a,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),a=Math.min(a,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:yg(wg(t,c)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*d,cut_y:-1e3*c}}function vg(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>yg(wg(t,n+s*o,"level"))).reduce((s,a)=>bg(a)>1.001*bg(s)?a:s)}function bg(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function Pd(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,a],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(a,p)>e||Math.max(a,p)<e))for(let m of a===p?[s,c]:[s+(e-a)/(p-a)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var kg=40,Nx=2e3,Od=0;async function xg(t){let e=await en({kind:"glb",gauge:t}),n=xi(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Ti(t){let[e,n]=await Promise.all([jn(t),xg(t)]),o=Bs(n);return{gauge:e,outline:o,above:vg(n,o)}}async function jx(t){let{pockets:e}=await jn(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:kg},(i,s)=>`${(n*(s+1)/kg).toFixed(4)} mm`);return jn({...t,depth:o})}function He(){Hx()}async function Hx(){let t=$(l.run.now,"/pour/mould");if(typeof t!="string")return;let e=++Od,n=ee(t,l.files?.moulds);try{let[o,i]=await Promise.all([jx({file:n}),xg({file:n})]);e===Od&&f({measured:{mould:n,gauge:o,outline:Bs(i)},measuring_failed:void 0})}catch(o){if(e!==Od)return;if(!(o instanceof y))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(He,Nx)}}var Md=(t,e="")=>Ro("GET",`/api/record?run=${encodeURIComponent(t)}&batch=${encodeURIComponent(e)}`),Tg=t=>tn("/api/record/begin",t),xa=t=>tn("/api/record/note",t);var qx=1e4,Bd=2500,Cd=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Cd);var Ta=[],Ri=()=>`notes ${l.files?.folder??""}`;function An(){try{return[...JSON.parse(localStorage.getItem(Ri())??"[]"),...Ta]}catch{return Ta}}function Ld(t){try{t.length?localStorage.setItem(Ri(),JSON.stringify(t)):localStorage.removeItem(Ri()),Ta=[]}catch{Ta=t}}var Fd=(t,e)=>t.batch===e.batch&&t.key===e.key,an=(t,e)=>l.record.acts.filter(n=>Fd(n,{batch:t,key:e})).at(-1);function Rg(t){let e=An(),n=e.filter(i=>Fd(i,t)).at(-1),o={...t,seen:n?.seen??t.seen,id:crypto.randomUUID(),tab:Cd,at:Date.now()};Ld([...e.filter(i=>!Fd(i,t)||i.was_sent&&!i.refused),o])}var Id=t=>Ld(An().map(t)),Ra=(t,e)=>Id(n=>n.id===t?{...n,...e}:n),Cs=t=>Ld(An().filter(e=>!t(e))),Ux=({is_typed:t,lacks:e,refused:n,at:o})=>!n&&!e&&(!t||Date.now()-o>=Bd),Wd=()=>An().find(t=>Ux(t)&&(t.tab===Cd||Date.now()-t.at>qx));var Sg=2e3,Ht=t=>f({record:{...l.record,...t}}),Si=()=>Ht({acts:An()});addEventListener("storage",({key:t})=>{t===Ri()&&Si()});function Sa(){let{file:t}=l.run;!t||l.record.run===t||(f({record:{run:t,batches:[],acts:An(),chosen:zx(t)}}),io().then(Ls))}function Ag(t){l.record.run===t&&(Ht({run:l.run.file}),io())}var Dg=t=>`record ${t}`,zx=t=>sessionStorage.getItem(Dg(t))??void 0,jd=()=>l.record.run===l.run.file?l.record.version:void 0,Nd=0;async function io(){let{run:t,chosen:e}=l.record,n=Nd;try{let o=await Md(t,e);if(t!==l.record.run)return;if(n!==Nd||e!==l.record.chosen)return await io();let{batches:i,run_batches:s}=o.record;Ht({batches:i,of:s??l.record.of,version:o.version,failed:void 0})}catch(o){if(!(o instanceof y))throw o;if(t!==l.record.run)return;Ht({failed:C(o.complaint)}),Pg(o)&&setTimeout(()=>l.record.failed!==void 0&&void io(),Sg)}}var Pg=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);function Aa({record:t},e){if(++Nd,e!==l.record.run)return;let n=new Set(t.batches.map(({begun:d})=>d.id)),o=d=>n.has(d.begun.id),i=d=>t.batches.find(({begun:c})=>c.id===d.begun.id)??d,s=t.batches.filter(({begun:d})=>!l.record.batches.some(c=>c.begun.id===d.id)),a=[...l.record.batches.map(d=>o(d)?i(d):d),...s];Ht({batches:a,of:t.run_batches??l.record.of})}function Da(){let{batches:t,chosen:e}=l.record;return t.find(({begun:n})=>n.id===e)??t.at(-1)}var Hd=(t,e)=>sessionStorage.setItem(Dg(t),e);function zo(t){Hd(l.record.run,t),Ht({chosen:t}),io()}var Jo=(t,e)=>l.record.batches.filter(n=>n.number===t&&(!e||new Date(n.begun.begun_at)>=new Date(e))).at(-1),Pa=({pieces:t,written:e})=>`${t} ${t===1?"piece":"pieces"}, ${e}`;function Oa({blanks:t,cured:e,rows:n},o){let i=/^cured\.(.+)$/.exec(o)?.[1],s=i&&e?.find(({on:a})=>a===i);return i?s?Pa(s):"":[...t??[],...n??[]].find(a=>a.key===o)?.noted??""}function qd(t,{key:e,text:n,value:o,is_left:i,lacks:s}){let a=Oa(t,e),d=an(t.begun.id,e);if(o===a&&!s&&(!d||!d.was_sent&&d.seen===a))return d&&Cs(({id:m})=>m===d.id),Si();if(d?.value===o&&!d.lacks==!s&&(d.refused??!d.is_typed))return;let{run:p}=l.record;Rg({run:p,batch:t.begun.id,key:e,text:n,value:o,seen:a,is_typed:!i,lacks:s}),Si(),i?Ls():setTimeout(()=>{Ls()},Bd+50)}var so=(t,e,n)=>qd(t,{key:e,text:n,value:n,is_left:!0});function Og(t){let{refused:e,value:n}=t;if(!e)return;let{answers:o={confirmed:n}}=e,i=(a=[],d)=>d===void 0?a:[...a,d],s=e.is_asked?{confirmed:i(t.confirmed,o.confirmed),beyond:i(t.beyond,o.beyond)}:{seen:e.noted??t.seen};Ra(t.id,{...s,refused:void 0}),Si(),Ls()}function Mg(t){Cs(({id:e})=>e===t.id),Si()}var Ed=!1;async function Ls(){if(!Ed){Ed=!0;try{await navigator.locks.request(Ri(),Jx)}finally{Ed=!1}An().some(t=>!t.refused&&!t.lacks)&&setTimeout(()=>{Ls()},Sg)}}async function Jx(){for(let t=Wd();t;t=Wd())if(!await Vx(t))return}var Kx=({batch:t,run:e})=>l.record.batches.some(({begun:n})=>n.id===t)?l.record.run:e;async function Vx(t){let{id:e,batch:n,key:o,value:i,seen:s,confirmed:a,beyond:d}=t,c=Kx(t);Ra(e,{was_sent:!0});try{let p=await xa({run:c,batch:n,act:e,set:{[o]:i||null},seen:{[o]:s||null},confirmed:a,"beyond-stock":d});return Cs(m=>m.id===e),Qx(t,p),Aa(p,c),Ht({acts:An(),unsent:void 0}),!0}catch(p){if(!(p instanceof y))throw p;return Pg(p)?(Ht({unsent:C(p.complaint)}),!1):(await Gx(t,p),!0)}}function Qx({batch:t,key:e},{record:n}){let o=n.batches.find(({begun:i})=>i.id===t);Id(i=>i.batch!==t?i:i.key===e?o?{...i,seen:Oa(o,e)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function Gx({id:t,value:e},{complaint:n}){let{asks:o,choices:i,problem:s}=n,a=o==="seen"?i?.[0]?.seen??"":void 0,d=a===!0?"":a,c=o?s:C(n);d===e?Cs(p=>p.id===t):Ra(t,{refused:{words:c,is_asked:o==="confirmed"||o==="beyond-stock",noted:d,...Yx(i)}}),Si(),await io()}function Yx(t=[]){let e=t[0]?.confirmed,n=t[0]?.["beyond-stock"];return e===void 0&&n===void 0?{}:{answers:{confirmed:e,beyond:n},is_lye:e===Zx}}var Zx="lye-heavy",Ma=t=>l.record.acts.filter(e=>e.batch===t&&(e.refused??e.lacks)).length;async function Fa(t,e){if(!t||!e)return;let n=t.blanks?t:await Xx(t.begun.id),o=n?.blanks?.filter(Ud)??[];n&&o.length===1&&so(n,o[0].key,e)}async function Xx(t){try{return(await Md(l.record.run,t)).record.batches.find(({begun:e})=>e.id===t)}catch(e){if(!(e instanceof y))throw e;return}}var Ud=({key:t})=>/^topping(-\d+)?\.cup$/.test(t);var Fg=()=>Ro("GET","/api/stock?names"),Bg=t=>tn("/api/stock/act",t),Cg=t=>Ro("GET",`/api/trail?of=${encodeURIComponent(t)}`);var tT=2e3,Dn=t=>f({stock:{...l.stock,...t}}),Lg=()=>l.view==="shelf"||l.view==="trail",Ba=()=>Lg()?l.stock.version:void 0,eT=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);async function ro(){try{let{version:e,stock:n}=await Fg();Dn({version:e,list:n,failed:void 0})}catch(e){if(!(e instanceof y))throw e;Dn({failed:C(e.complaint)}),eT(e)&&setTimeout(()=>Lg()&&l.stock.failed!==void 0&&void ro(),tT)}let{trail:t}=l.stock;l.view==="trail"&&t&&await Ig(t.of)}function Te(t){let e=l.stock.trail?.of===t;f({view:"trail",stock:{...l.stock,trail:e?l.stock.trail:{of:t}}}),l.stock.version===void 0?ro():Ig(t)}async function Ig(t){let e=n=>l.stock.trail?.of===t&&Dn({trail:n});try{let{version:n,trail:o}=await Cg(t);e({of:t,trail:o}),Dn({version:n})}catch(n){if(!(n instanceof y))throw n;e({of:t,complaint:C(n.complaint)})}}var Wg=()=>`shelf ${l.files?.folder??""}`;function zd(t){sessionStorage.setItem(Wg(),JSON.stringify(t)),Dn({forms:t})}function Eg(){try{Dn({forms:JSON.parse(sessionStorage.getItem(Wg())??"[]")})}catch{Dn({forms:[]})}}var Jd=(t,e)=>t.kind===e.kind&&t.of===e.of,Pn=t=>l.stock.forms.find(e=>Jd(e,t));function Kd(t){if(Pn(t))return;let e={on:nT(),...t.typed};zd([...l.stock.forms,{sources:[],confirmed:[],act:crypto.randomUUID(),...t,typed:e}]),Dn({told:void 0})}var Vd=t=>zd(l.stock.forms.filter(e=>!Jd(e,t))),Ai=(t,e)=>zd(l.stock.forms.map(n=>Jd(n,t)?{...n,...e}:n)),qe=(t,e)=>Ai(t,{...e,typed:{...t.typed,...e.typed},act:crypto.randomUUID(),confirmed:[],complaint:void 0});function Ko(t,e,n){Ai(t,{complaint:{file:"",field:e,problem:n,remedy:"",line:n}}),P(n)}async function Ca(t,e){let n=Pn(t);if(!n||n.is_asking)return!1;Ai(t,{is_asking:!0,complaint:void 0});try{let{stock:o}=await Bg({...e,act:n.act,confirmed:n.confirmed,seen:n.seen}),i=o.done.length?o.done:["It was recorded already."];return Vd(t),Dn({told:{of:t.of,sentences:i}}),P(i.join(" ")),await ro(),!0}catch(o){if(!(o instanceof y))throw o;return Ai(t,{is_asking:!1,complaint:o.complaint}),P(`Not recorded: ${o.complaint.problem}`),o.complaint.asks==="seen"&&await ro(),!1}}function Ng(t,e){Ai(t,{confirmed:[...t.confirmed,e],complaint:void 0})}var jg=(t,e)=>Ai(t,{seen:e,complaint:void 0});function nT(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var Is=()=>f({own_fats:{}});function ao(t){let e=Ws(t);return Array.isArray(e)?[...e,...l.fats]:l.fats}function Ws(t){let e=l.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=l.beside.own_fats;if(o&&[Xt(e.file)+n,n].includes(o.file))return qg(o.now)??"none";let i=`${e.file}
${n}`,s=l.own_fats[i];return s||(Hg(i,"waiting"),oT(n,e.file).then(a=>Hg(i,a)),"waiting")}var Hg=(t,e)=>f({own_fats:{...l.own_fats,[t]:e}});async function oT(t,e){for(let n of new Set([Xt(e)+t,t])){let o=qg(await iT(n));if(o)return o}return"none"}var qg=t=>Array.isArray(t?.fats)?t.fats.map(sT):void 0;async function iT(t){try{return vt((await Et(t)).text)}catch{return}}var sT=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:rT(n)});function rT(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Di=[],Es;function La(){Di.length=0;for(let{file:t,shipped:e}of l.files?.moulds??[])e||Di.push(t);Es===void 0&&Ug()}function Qd(t){let e=l.own_moulds[t];return!e&&t!==Es&&!Di.includes(t)&&Di.push(t),Es===void 0&&Di.length&&Ug(),e}async function Ug(){for(;(Es=Di.shift())!==void 0;){let t=Es,e=await lT(t);e&&f({own_moulds:{...l.own_moulds,[t]:e}})}}var aT=2e3;async function lT(t){try{let{pockets:e}=await jn({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof y))throw e;if(e.may_pass){window.setTimeout(()=>Qd(t),aT);return}let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Kg=()=>f({own_tips:{}}),Gd=!1;function Ns(){return!l.tips&&!Gd&&(Gd=!0,cf().then(t=>f({tips:t}),Vg).finally(()=>Gd=!1)),l.tips??[]}function Yd(t){let e=Ne(t),n=l.beside.own_tips;if(n?.file===e)return Jg(n.now);let o=l.own_tips[e];return o||!t||l.typed?o??[]:(zg(e,[]),Et(e).then(({text:i})=>zg(e,Jg(vt(i))),Vg),[])}var zg=(t,e)=>f({own_tips:{...l.own_tips,[t]:e}});function Jg(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function Vg(t){if(!(t instanceof y))throw t}var Ia=300,uT=5e3,Xg=2e3,dT=500,Qg=!1,js=new AbortController,t_=()=>js.abort(),e_=()=>document.visibilityState==="hidden";function Wa(){if(Qg)return;Qg=!0;let t=async()=>{js=new AbortController;let e=await cT(js).then(()=>e_()?uT:Ia,()=>js.signal.aborted?Ia:Xg);await Gg(Ia),await Gg(e-Ia,js.signal),t()};t()}var Gg=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),n_=()=>[l.run,...l.order?[l.order.open]:[],...l.mould?[l.mould.open]:[],...Eo()],Zd=()=>{let t=qh();return t&&{...t,record:jd()}},o_=()=>new Map(n_().flatMap(Sh)),Yg=()=>JSON.stringify([[...o_().keys()],[...ud().keys()],Zd()?.run??null,jd()??null,Ba()??null]);async function cT(t){let e=Fh();e.length&&await Zg(e);let[n,o]=[o_(),ud()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),a=s&&!e_()?await pT(i,t):await ps(i,{bench:Zd(),stock:Ba()});a.bench!==void 0&&await Sn(),a.record!==void 0&&await io(),a.stock!==void 0&&await ro(),dd(a.unreadable),await mT(n,a);let d=Mh(o,s?a:await ps(o));d.length&&await Zg(d)}async function pT(t,e){let[n,o]=[Yg(),Date.now()],i=window.setInterval(()=>{(Yg()!==n||Date.now()-o>ef+Xg)&&e.abort()},dT);try{return await nf(t,{bench:Zd(),stock:Ba()},e.signal)}finally{window.clearInterval(i)}}async function mT(t,{changed:e}){let n=Eo();for(let o of n_()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await fT(o,i):await od(o,i,ld,()=>{}))}}async function fT(t,e){let n=!1,o=()=>{n=!0,cd([t.file])};try{await od(t,e,ld,o)&&Is()}finally{n&&pt()}}async function Zg(t){cd(t);try{await id(),Is(),Kg(),f({measured:void 0}),He(),La(),await Promise.all([oo(),yi(!0)])}finally{pt()}}async function s_(t){let e=await bf();f({files:e});let n=$f(e,t.run);try{await Ea(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function tc(){try{let[t,e]=await Promise.all([uf(),df()]);f({fats:t,catalogue:e})}catch(t){if(!(t instanceof y))throw t;t.may_pass?window.setTimeout(()=>{tc()},hT):f({fault:t.message})}}var hT=2e3,gT=()=>new Promise(t=>setTimeout(t,400)),Xd={};function On(t,e){return xt(),Ea(t,e)}async function Ea(t,e="weigh"){if(!t)return f({view:"runs"});let n=Xd={name:t},o=l.view;l.run.file&&X(l.run)&&await sn();let i=await Pt(Mo,t);if(Xd!==n||(hi(i),ma(),await Promise.race([Nh(),gT()]),l.run!==i))return;l.view===o&&Xd===n&&f({view:e}),localStorage.setItem("run",i.file),X(i)&&(Xn(i),Vn());let s=$i().finally(He);await Promise.all([s,oo(),yi()]),Wa()}var i_=()=>(l.files?.studios??[]).some(t=>t.file==="studio.json");async function Na(t){let e=xt(),n=l.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(i.cut={bar:{thickness:t.slice},...i_()?{}:{kerf:""}}),i_()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!l.run.shipped&&(i.money=n.money));let{file:s}=await ve({kind:Mo,name:Le(t.name,".run.json"),text:st(i)});e()&&(ut("set-up pour"),t.slice&&ut("set-up cut"),await On(s,"set-up"))}var _T="examples/plain_bars.run.json";function ne(t){Is();let e=wn(l.view)?l.view:l.came_from;f({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Hs(t){let e=xt(),n=["pour","pipe"].find(i=>l.run.file&&l.formulas[i]?.file===t);if(n)return ne(n);l.run.file||await Ea(_T,"reading");let o=await Pt(Bo,t);e()&&$T(o)}function $T(t){f({run_steps:{past:l.past,future:l.future},past:[],future:[]}),xn("apart",t),X(t)&&Xn(t),f({plan:void 0,complaint:void 0}),ne("apart"),$i()}async function bT(){let t=l.formulas.apart!==void 0;return await ja()?(f({view:t?"weigh":l.came_from,typed:void 0}),!0):!1}async function ja(){return l.formulas.apart?await wT()?($i(),!0):!1:!0}async function wT(){try{await rn()}catch(e){if(!(e instanceof y))throw e;return f({complaint:e.complaint}),!1}if(l.formulas.apart?.theirs)return P("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;xn("apart",void 0);let t={...l.dangers,apart:[]};return f({dangers:t,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function r_(t){let e=l.view==="formula"&&l.formulas[l.formula_of]===t,n=l.formulas.apart===t;for(let o of["pour","pipe"])l.formulas[o]===t&&xn(o,void 0);n&&await ja(),e&&f({view:n?"formulas":"set-up",typed:void 0})}async function ec(t){let{file:e}=l.formulas.apart;await bT()&&tt("run",`/${t}/formula`,e)}var yT=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),a_=t=>u_(yT(t));async function l_(t,e){let{$schema:n,...o}=JSON.parse((await Et(t)).text);await u_({...o,name:e},t)}async function u_(t,e){let n=xt(),o=Le(String(t.name),".formula.json"),{file:i}=await ve({kind:Bo,name:o,text:st(t),from:e});n()&&await Hs(i)}var vT=30,kT=2e3,d_=0,nc=!1,oc=!1;function ic(t,e,n){let o=e==="mesh"?l.mesh:void 0;f({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),Ha()}var ln=()=>f({mould:void 0,mesh:void 0}),Pi=(t,e,n)=>ic(Io(te,t),e,n);async function c_(t,e){let n=xt(),o=await Pt(te,t,e?crypto.randomUUID():t);if(!n())return!1;let i=String(o.now.name??t);return e&&v(o,{now:{...o.now,name:""}}),ic(o,"form",e?`A copy of ${i}`:`Change ${i}`),!0}async function p_({id:t,file:e,text:n}){let o=xt(),i=e?await Pt(te,e,t):Io(te,JSON.parse(n),t);return o()?(ic(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var it=()=>l.mould,z=()=>it().open.now;function At(t,e){wi(it(),t),Ot(it().open,F(z(),t,e))}var m_=()=>ha(it()),f_=()=>ga(it()),xT=["name","note","owned","unmould_after"];function sc(t){let e=z(),n=Object.keys({...t,...e}).filter(a=>t?.[a]!==e[a]);(!t||n.some(a=>!xT.includes(a)))&&v(it(),{is_old:!0});let i=n.some(a=>it().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(it().is_old||i||s)&&Ha()}function Ha(){clearTimeout(d_),d_=window.setTimeout(()=>{TT()},vT)}async function TT(){if(nc)return void(oc=!0);let{mould:t}=l;if(!t)return;let e=t.open.now;if(!(!Ce(e,"shape")&&!Ce(e,"mesh"))){if(ys(e).length)return v(t,{complaint:void 0});nc=!0;try{let n=te.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Ti(o);t.open.now===e&&v(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;t.open.now===e&&t===l.mould&&rc(n),n.may_pass&&window.setTimeout(Ha,kT)}finally{nc=!1,oc&&Ha(),oc=!1}}}function rc(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,a=e?`${n}; ${o}`:t.message;v(it(),{complaint:{field:oa(z(),e),line:a,keep:i&&{...i,at:oa(z(),i.at)},about:s===void 0?void 0:oa(z(),`${e}/${s}`)}})}var h_={};async function qs(t){xt();let e=h_={name:t},n=l.view;if(l.order?.open.file!==t){l.order&&X(l.order.open)&&await sn(l.order.open);let o=await Pt(Fo,t);if(h_!==e)return;let i=X(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),X(o)&&Vn(o)}l.view===n&&f({view:"order",typed:void 0}),Wa()}function g_(){f({order:void 0,...l.view==="order"?{view:"orders"}:{}})}async function __(t){let e=xt(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},o=Fo.new_name(Io(Fo,n)),{file:i}=await ve({kind:Fo,name:o,text:st(n)});e()&&await qs(i)}var qt=()=>l.order,$_=()=>ha(qt()),b_=()=>ga(qt());var qa=t=>Object.values(l.formulas).includes(t),Oi=t=>Object.values(l.beside).includes(t),w_=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function RT(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&He(),w_(t)!==w_(e)&&oo(),pt(),Vn()}var ST=pt;function AT(t,e){for(let n of["pour","pipe"]){if(l.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(ue(e))?F(s,o,t.file):s;bd(l.run,i),i(l.run.now)!==l.run.now&&Ot(l.run,i(l.run.now))}}async function DT(t){t===l.run?(hi(),localStorage.removeItem("run"),f({view:"runs"})):t===l.mould?.open?ln():t===l.order?.open?g_():Oi(t)?_a(t):await r_(t),await xe(),l.run.file&&pt()}function y_(){Ie("edited",({file:t,before:e})=>{Ih(),t===l.run?RT(e,t.now):qa(t)||Oi(t)?ST():t===l.mould?.open?sc(e):t===l.order?.open&&Vn(t)}),Ie("gave_way",({file:t})=>{if(f({typed:void 0}),t===l.mould?.open)return sc();t!==l.order?.open&&(t===l.run&&(He(),oo().then(pt)),pt())}),Ie("left_deleted",({file:t})=>{DT(t)}),Ie("unwritten",({file:t})=>{t===l.run||t===l.order?.open?sn(t):(qa(t)||Oi(t))&&pt()}),Ie("conflict",({file:t})=>{(qa(t)||Oi(t))&&f({is_old:!0})}),Ie("renamed",({file:t})=>{Oi(t)&&l.held_open!==void 0&&f({held_open:t.file}),t===l.run&&(localStorage.setItem("run",t.file),He(),oo()),pt()}),Ie("copied",({file:t,from:e})=>{qa(t)&&AT(t,e),Oi(t)&&rg(t,e),l.held_open===e&&f({held_open:t.file}),t===l.run&&(Hh(e),Ag(e),localStorage.setItem("run",t.file),yi().then(pt))})}var pe=r`<span aria-hidden="true">⚠</span> Danger`;function Us(t,e="",n){let o=lo(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${pe}</strong> ${i}</p>`)}
  </div>`:u}function lo(t,e){let n=t==="pour"?"pipe":"pour";return l.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function v_(){let t=ae(l.view)||l.view==="order"||l.view==="trail"||xs()==="apart",e=l.dangers.run.map(({text:n})=>({from:t?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var k_=()=>v_().length>0;function x_(){let t=v_(),e=MT(),n=e||ae(l.view)?"":pd();return!t.length&&!e&&!n?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:o,text:i})=>r`<p class="danger"><strong>${pe}</strong> ${o}${i}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${PT()?r`<button type="button" @click=${OT}>To the question</button>`:u}
          </div>`:u}
    ${n?r`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:u}
  </section>`}var PT=()=>Tn(xs())!==void 0&&!ae(l.view);function OT(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function MT(){if(!l.run.file||l.view==="reading")return"";let t=Tn(xs());if(t&&Wo(t))return`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(t)return`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let e=l.changed_beside;return l.is_old&&e.length?`${Mt(e)} ${e.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var Mn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Ua=t=>(...e)=>({_$litDirective$:t,values:e}),Mi=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:FT}=Nf,T_=t=>t;var S_=t=>t.strings===void 0,R_=()=>document.createComment(""),Fi=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(R_(),i),a=o.insertBefore(R_(),i);n=new FT(s,a,t,t.options)}else{let s=n._$AB.nextSibling,a=n._$AM,d=a!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==a._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=T_(c).nextSibling;T_(o).insertBefore(c,i),c=p}}}return n},uo=(t,e,n=t)=>(t._$AI(e,n),t),BT={},za=(t,e=BT)=>t._$AH=e,A_=t=>t._$AH,Ja=t=>{t._$AR(),t._$AA.remove()};var A=Ua(class extends Mi{constructor(t){if(super(t),t.type!==Mn.PROPERTY&&t.type!==Mn.ATTRIBUTE&&t.type!==Mn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!S_(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Nt||e===u)return e;let n=t.element,o=t.name;if(t.type===Mn.PROPERTY){if(e===n[o])return Nt}else if(t.type===Mn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Nt}else if(t.type===Mn.ATTRIBUTE&&n.getAttribute(o)===e+"")return Nt;return za(t),e}});var Qt=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Fn(t,e){let n=Qt(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>Qt(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Ka(t,e){let n=Qt(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}var Bi=28.349523125,M_=25.4,CT=29.5735295625;function un(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function R(t,e){return F_(un(t,e))}var F_=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function oe(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${un(t,e)} %`:ac(t)?"just below 0 %":"0.0 %"}var ac=t=>t<0||Object.is(t,-0),B_=t=>Math.abs(t-Math.round(t))<1e-6;function D_(t){return t?[0,1,2,3].find(e=>B_(t*10**e))??3:0}function P_(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function LT(t){return[0,1,2].find(e=>t.every(n=>B_(n*10**e)))??3}function Js(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function rt(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-LT([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var C_=.001;function zs(t,e,n,o,i=1e-9){let s=10**n;return un(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var O_=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function IT(t){if(!O_.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return O_.find(e=>Math.abs(e*Bi-t)<.6*C_)}function Y(t,e,n="nearest"){let o=e.scale_step_g||.1,i=IT(o),s=Math.min(.6*C_,o/2),a=i?zs(e.g,1,P_(o),n):zs(e.g,1,D_(o),n,s),d=i?zs(e.g,Bi,D_(i),n,s):zs(e.g,Bi,P_(o/Bi),n),[c,p]=[`${e.g_text??a} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Js(t,c,p)}var q=(t,e,n=1,o="nearest")=>Y(t,{g:e,scale_step_g:10**-n},o);function Re(t,{g:e=0,pieces:n}){if(n!==void 0)return`${n} ${n===1?"piece":"pieces"}`;let o=a=>F_(zs(e,a,3,"down")),i=16*Bi,s=e<1e3?`${o(1)} g`:`${o(1e3)} kg`;return D(Js(t,s,e<i?`${o(Bi)} oz`:`${o(i)} lb`))}function Lt(t,e,n=1){return Js(t,`${un(e,n)} ml`,`${un(e/CT,2)} US fl oz`)}function Ft(t,e){return Js(t,`${R(e,1)} mm`,WT(e))}function WT(t){let e=Math.round(Math.abs(t)/M_*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var lc=([t])=>t,D=([t,e])=>e?`${t} (${e})`:t;function L_(t,e){return Js(t,`${un(e,0)} \xB0C`,`${un(e*1.8+32,0)} \xB0F`)}function Ue(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??M_;return n*o}function Se(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Tt=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function U(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function $t(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${U(t)}`}var I_=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),bt=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,U);function Va(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function co(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function N_(t){let e=Ue(t.round?.radius);if(e)return W_(e,S`<circle class="plain" r=${e} />`);let n=ET(t);if(!n)return u;let o=Math.max(...n.map(([i,s])=>Math.hypot(i,s)));return o>0?W_(o,S`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var W_=(t,e)=>r`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function ET({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return NT(t);if(!Array.isArray(e))return;let n=e.map(o=>[E_(o,"x"),-E_(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function E_(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(Ue(n.replace(/^-/,""))??NaN)}function NT({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[Ue(e),Ue(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(s,a)=>{let d=Math.PI*a/t,c=a%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var uc=!1;function j_(t){let{plan:e,explanation:n}=l,o=n?.of!==e;return o&&!uc&&HT(),{workings:jT(n?.workings,t),complaint:n?.complaint,is_old:o}}function jT(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function HT(){let{plan:t,planned:e}=l;if(!(!t||!e)){uc=!0;try{let{how:n}=await of(e);f({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;f({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{uc=!1}}}var H_=S`<path class="wall" d="M30 10l8 52h44l8-52" />`,dc={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:S`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${H_}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:S`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:S`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${H_}<path class="measure" d="M20 10h80" />`}};var cc=t=>`term ${t}`;function Bn(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${l.open.has(cc(t))?"true":"false"}
    aria-label="What ${dc[t].name} means"
    @click=${()=>Ct("open",cc(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function ze(t){if(!l.open.has(cc(t)))return u;let{name:e,words:n,drawing:o}=dc[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var po=t=>r`<span class="term">${Bn(t)}${ze(t)}</span>`;function L({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:a,term:d}){let c=l.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ct("open",t)}
    >
      <span class="name">${e}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${Bn(d)}${ze(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?Qa(i):pc(o)}</div>`:u}
  </div>`}var Vo=(t,e,n)=>L({key:t,label:e,shown:["",""],of:n});function pc(t){let{workings:e,complaint:n,is_old:o}=j_(t);return e.length?r`<div class=${o?"old":""}>${e.map(Qa)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Qa({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:d,value:c,from:p})=>r`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var Qo,Ks=[],Cn=()=>Qo!==void 0;function me(t,e,n,o){if(!Qo||Qo.some(s=>s.id===n))return;let i=Ks.flatMap(({part:s})=>s??[]);Qo.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:Ks.flatMap(({fold:s})=>s??[])})}function Ae(t,e){Ks.push(t);try{return e()}finally{Ks.pop()}}var q_=()=>{},U_=t=>{q_=t},Ga,qT=()=>[l.run.now,...Object.values(l.formulas).map(t=>t.now),...Object.values(l.beside).map(t=>t.now),l.formulas.apart,l.plan,l.fats,l.files];function Ci(){if(Cn())return[];let t=qT();return Ga?.of.length===t.length&&t.every((n,o)=>n===Ga.of[o])||(Ga={of:t,wanted:UT()}),Ga.wanted}function UT(){Qo=[],Ks=[];try{return q_(),Qo}finally{Qo=void 0}}function z_(t){l.touched.has(t)||f({touched:new Set(l.touched).add(t)})}function J_(t,e){if(l.has_asked)return!1;let n=Ci().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var Q=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Ya(t){if(t==="order")return l.order?.quoted?.complaint??l.order?.days?.complaint;let e=(n,o)=>o===l.plan?n?.complaint:void 0;return l.complaint??e(l.quoted,l.quoted?.of)??e(l.run_days,l.run_days?.of[0])}function Ut(t,e){let n=Ya(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return De(t)&&!J_(t,n.field)?C(n):void 0}function Rt(t,e){return Ya(t)?.field===e?Ut(t,e):void 0}function De(t){let e=Ya(t),n=to(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function zT(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function dn(){let t=Ya();if(t)for(let e of["run",...ft,...kt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Ut(e,n)&&document.getElementById(Q(e,n));if(o)return o}}function JT(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=KT(t,n);return o&&Tt(e)?`${e.trim()} ${o}`:e}function KT(t,e){return Se(g(e,t.at))||t.unit||""}var gt=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,mc=!1;addEventListener("pointerdown",()=>mc=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>mc=!1,!0);var VT=()=>f({typed:void 0});function Go(t){let{id:e}=t.target,n=()=>{VT(),z_(e)};mc?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var QT=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,GT=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function h(t){let e=t.of??"run",n=Q(e,t.at),o=g(e,t.at),i=QT(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||a.trim()===""&&(!t.optional||t.is_due===!0);d&&me(e,t.at,n,t.label);let c=Ut(e,t.at),p=b=>{let w=b.target.value;f({typed:{key:n,text:w}});let x=JT(t,w);tt(e,x===void 0&&t.takes_part?zT(e,t.at):t.at,x)},_=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${fc(r`<label for=${n} data-said=${GT(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${A(a)}
      @input=${p}
      @blur=${Go}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${gt(n,c,_)} ${t.term?ze(t.term):u}
  </div>`}var fc=(t,e)=>e?r`<div class="labelled">${t}${Bn(e)}</div>`:t;function Gt(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var B=t=>()=>document.getElementById(t),ot=(t,e)=>B(Q(t,e)),Je=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),YT=()=>document.activeElement;function I(t){requestAnimationFrame(()=>Gt(t()))}function fe(t,e,n,o=YT){P(e),ig(t,n),I(o)}function j(t,e,n,o,i){fe(t,e,s=>F(s,n,o),i)}var Pe=(t,e,n)=>`${Q(t,e)}-${n}`;function E(t,e){let n=Rt(t,e);return n?r`<p id=${Q(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var K_=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function dt(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${K_(e,n,o)}</div>`}function T({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:d,then:c,hint:p,optional:m,term:_}){let b=i?Pe(t,n,e.replaceAll(/\W+/g,"-")):Q(t,o),w=s===void 0&&!m;w&&me(t,o,b,e);let x=i?void 0:Rt(t,o),G=Wt=>{if(Wt===s)return;let To=a.find(([Mk])=>Mk===Wt)[1];j(t,`${e}: ${To}`,n,d(Wt),c&&ot(t,c(Wt)))};return r`<div class="field asked ${x?"wants":""}">
    ${fc(r`<p class="question" id="${b}-label" data-said=${w?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${x||p?`${b}-said`:u}
    >
      ${K_(s,a,G)}
    </div>
    ${gt(b,x,p)} ${_?ze(_):u}
  </div>`}function hc(t,e,n,o){let i=Q("run",t),s=Rt("run",t),a=()=>j("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${a}
      >
        ${e}
      </button>
    </div>
    ${gt(i,s)}`}function wt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:d}){let c=Q(e,n),p=Ut(e,n),m=a??O(e,n);!m&&!s&&me(e,n,c,t);let _=!m||o.some(([x])=>x===m),b=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${x=>{let G=x.target.value;d?d(G):tt(e,n,G||!s?G:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${b.filter(([x])=>x||s||!m).map(([x,G])=>r`<option value=${x} .selected=${A(x===m)}>${G}</option>`)}</select
    >${gt(c,p)}
  </div>`}function Li(t,e,n=[]){let o=ee(O("run",e),n);return wt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Yt({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:a}){let d=Pe(t,e,"part"),c=Pe(t,e,"add"),p=()=>Ae({part:o},a);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>j(t,`${o} added`,e,s,Je(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>j(t,`${o} removed`,e,void 0,B(c))}
      >
        Remove
      </button>
    </div>
    ${E(t,e)} ${p()}
  </div>`}var V_=(t,e)=>`folded ${t} ${e}`,zt=(t,e)=>ut(V_(t,e));function M({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let a=V_(t,e);if(Cn())return r`${Ae({fold:a},s)}`;(i||n.some(p=>Ut(t,p)))&&ut(a);let d=l.open.has(a);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),Ct("open",a)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var k=({of:t="run",at:e})=>et(t,e),W=({of:t="run",at:e},n)=>Pe(t,`${e}/${n}`,"item"),Za=({of:t="run",at:e},n,o)=>Pe(t,`${e}/${n}`,o),ZT=({of:t="run",at:e})=>Q(t,e);function Vs(t,e,n,o){let{of:i="run",at:s,stays:a,and:d=c=>c}=t;fe(i,e,c=>d(F(c,s,n.length||a?n:void 0),n.length),o)}function H(t,e,n){let o=k(t);Vs(t,`${n} added`,[...o,e],Je(W(t,o.length)))}function XT(t,e,n){let o=k(t).filter((a,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);Vs(t,`${n} removed`,o,s?B(Za(t,i,"drop")):ot(t.of??"run",t.at))}function tR(t,e,n,o){let i=[...k(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let a=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":a;Vs(t,`${o} moved ${a}`,i,B(Za(t,e+n,c)))}function J(t,e,n){let o=k(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let a=(d,c,p)=>r`<button
      type="button"
      id=${Za(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>tR(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",e===0)} ${a(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Za(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>XT(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Z(t,e,n){let o=ZT(t),i=Rt(t.of??"run",t.at);return r`${gt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var at=()=>l.beside.studio!==void 0,Qs=({run:t})=>g("run",t),gc=({studio:t})=>g("studio",t);function Gs(t){return Qs(t)===void 0&&at()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var cn=t=>Qs(t)??gc(t),It=(t,e)=>h({...e,...Gs(t)}),_c=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function Ys(t,e=""){return t===void 0||_c(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>Ys(o,`${e}/${N(n)}`))}function Ln(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&_c($(t,n))&&(t=F(t,n,void 0));return t}var Ii=(t,e)=>e.reduce((n,o)=>Ln(F(n,o,void 0),o),t);function G_(t){let e=new Map;return t.flatMap(n=>Ys(Qs(n)).flatMap(([o,i])=>{let s=n.studio+o,a=e.get(s)??g("studio",s);return _c(a)||String(a).startsWith("?")||a===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function $c(t){at()||await $a();let e=G_(t);je([["studio",n=>e.reduce((o,[,i,s])=>F(o,i,s),n)],["run",n=>Ii(n,e.map(([o])=>o))]]),P("Kept in the studio")}function eR(t){let e=t.flatMap(o=>Ys(gc(o)).map(([i,s])=>[o.run+i,s]));je([["run",o=>e.reduce((i,[s,a])=>$(i,s)===void 0?F(i,s,a):i,o)]]),P("Said in this run only")}function nR(t){let e=t.flatMap(n=>Ys(Qs(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));je([["run",n=>Ii(n,e)]]),P("Taken from the studio again")}var Q_=t=>Ys(t).length>0;function mo(t,e){if(!at())return u;let n=e.some(s=>Q_(Qs(s))),o=e.some(s=>Q_(gc(s))),i=(s,a)=>r`<button type="button" aria-label="${t}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&G_(e).length?i("Keep in my studio",()=>{$c(e)}):u}
    ${n&&o?i("As in the studio",()=>nR(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>eR(e)):u}
  </span>`}function bc(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=l.files?.moulds;return e.find(o=>ee(o,n)===ee(t,n))??t}var mt=(t,e)=>Object.keys(g(t,e)??{}),Y_=(t,e)=>`${Q(t,e)}-name`;function Wi({of:t,at:e,label:n,add:o,blank:i,then:s}){let a=Y_(t,e),d=()=>{let c=document.getElementById(a),p=c.value.trim();if(!p)return c.focus();if(c.value="",mt(t,e).includes(p))return Gt(s(p)());j(t,`${p} added`,`${e}/${N(p)}`,i,s(p))};return r`<div class="row">
    <div class="field">
      <label for=${a}>${n}</label>
      <input
        id=${a}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function Zs({of:t,at:e,name:n,label:o,also:i=a=>a,put:s}){let a=`${Q(t,e)}-${mt(t,e).indexOf(n)}-called`;return yc({id:a,name:n,label:o,taken:mt(t,e),take:d=>{let c=p=>i(Xs(p,e,n,d),d);s?s(c,d):fe(t,`${n} is called ${d}`,c)}})}var wc;function yc({id:t,name:e,label:n,taken:o,take:i,hint:s}){let a=c=>{let p=c.target.value.trim(),m=p!==e&&o.includes(p);wc=m?{id:t,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===e)&&(i(p),P(`${e} is called ${p}`),I(B(t)))},d=wc?.id===t?wc.words:void 0;return r`<div class="field ${d?"wants":""}">
    <label for=${t}>${n}</label>
    <input
      id=${t}
      .value=${A(l.typed?.key===t?l.typed.text:e)}
      @input=${c=>f({typed:{key:t,text:c.target.value}})}
      @change=${a}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||s?`${t}-said`:u}
    />
    ${gt(t,d,s)}
  </div>`}function Xs(t,e,n,o){let i=Object.entries($(t,e)??{}).map(([s,a])=>[s===n?o:s,a]);return F(t,e,Object.fromEntries(i))}function Yo(t,e,n,o=n){let i=s=>Ln(F(s,`${e}/${N(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>fe(t,`${o} removed`,i,B(Y_(t,e)))}
    >
      ×
    </button>
  </div>`}var Zo="/pipe/beads",Ve=`${Zo}/tip`,oR={of:"run",at:Ve},pn={at:`${Zo}/moves`,in_order:!0},vc="\0own",e$={tip:"",bead_to_opening:"",moves:[]},Ke=(t,e)=>({name:t,label:e,kind:"length"}),Z_={name:"count",label:"How many",kind:"count"},X_=Ke("circle_radius","Radius of their circle"),kc={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Ke("diameter","Diameter"),Ke("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Ke("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Ke("start_radius","Radius at the start"),Ke("end_radius","Radius at the end"),Ke("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Ke("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Z_,X_,Ke("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Z_,X_,Ke("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Ke("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function n$(t){return r`${sR()} ${xc()?tl(oR):dR()}
    ${h({label:"Bead \xF7 tip opening",at:`${Zo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(pn).map((e,n)=>_R(e,n,t))}</div>
    ${wR()}`}var xc=()=>typeof g("run",Ve)=="object",Tc=()=>String(g("run",`${Zo}/own_tips`)??g("studio","/own_tips")??"");function iR(){let t=Tc(),e=t?Yd(t):[];return g("run",`${Zo}/own_tips`)===void 0?[...e,...Ns()]:e}function sR(){let t=n=>n===vc?j("run","a tip of your own",Ve,{name:"",round:{radius:""}},aR):tt("run",Ve,n),e=iR().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${wt({label:"Tip",at:Ve,answers:[...e,[vc,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:xc()?vc:void 0})}
  ${xc()?u:M({name:"tips",pointers:[`${Zo}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${Zo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var rR=Pe("run",Ve,"own"),aR=Je(rR);async function lR(){let t=g("run",Ve);if(!await xd())return;let e=et("own_tips","/tips"),n=uR(String(t.name).trim()||"My tip",e);je([["own_tips",o=>F(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>F(o,Ve,n)]]),P(`${n} kept in ${l.beside.own_tips.file}`)}function uR(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...Ns()].some(i=>i.name===o))return o}}function dR(){let t=O("run",Ve),e=Tc();if(!t||!e||!Yd(e).some(o=>o.name===t))return u;let n=et("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{xd()}}>Change this tip of my own</button>`:tl({of:"own_tips",at:`/tips/${n}`})}var t$=[["round","Round"],["star","Star"],["outline","Another outline"]],Xa={x:"",y:""},cR={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Xa,Xa,Xa]};function tl({of:t,at:e}){let n=t$.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...ht(t,e,n),[s]:cR[s]});return r`<div class="part" id=${Pe(t,e,"own")} role="group" aria-label="My own tip">
    ${E(t,e)} ${pR({of:t,at:e})}
    ${T({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:t$,puts:i})}
    ${o?hR({of:t,at:e},o):u}
    ${M({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>fR({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{lR()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var pR=({of:t,at:e})=>t==="run"?h({label:"What you call the tip",at:`${e}/name`}):yc({id:Q(t,`${e}/name`),name:O(t,`${e}/name`),label:"What you call the tip",taken:et("own_tips","/tips").map(({name:n})=>String(n)),take:n=>mR(e,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function mR(t,e){let n=O("own_tips",`${t}/name`),o="/hand",i=Ne(Tc())===l.beside.own_tips?.file,s=i&&g("run",Ve)===n,a=i&&g("studio",`${o}/${N(n)}`)!==void 0;je([["own_tips",d=>F(d,`${t}/name`,e)],...s?[["run",d=>F(d,Ve,e)]]:[],...a?[["studio",d=>Xs(d,o,n,e)]]:[]])}function fR({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${h({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button
            type="button"
            @click=${()=>j(t,"correction removed",n,void 0,Je(Pe(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${h({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function hR(t,e){if(e==="outline")return gR(t);let{of:n,at:o}=t,i=(s,a)=>h({of:n,label:a,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function gR({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>r`<div class="row" id=${W(n,i)}>
          ${h({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${J(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Z(n,"One more corner",()=>H(n,Xa,"corner"))}`}function _R(t,e,n){let o=kc[String(t.move)],i=`${pn.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${W(pn,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${J(pn,e,s)}
    </div>
    ${E("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>$R(i,a))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${bR(e,n)}
  </div>`}function $R(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${t}/${e}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function bR(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==k(pn).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return L({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:Lt(l.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function wR(){let t=o=>({move:o,...Object.fromEntries(kc[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=Q("run",pn.at),n=Rt("run",pn.at);return k(pn).length||me("run",pn.at,e,"What the tip does"),r`${gt(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(kc).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>H(pn,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function mn(t,e=()=>{}){if(!t.theirs)return u;let n=Wo(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{yh(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>vh(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>wh(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function fn(t){if(t.theirs||!t.set_aside||bi(t)&&!t.is_taken)return u;let e=()=>{bi(t)&&qo(),kh(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>$h(t)}>Close</button>`:u}
    </div>
  </section>`}var el={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function i$(t,e){let n=Ws(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=et("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{yR(t,e)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return M({of:"own_fats",name:e,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>Ae({part:O("own_fats",`${a}/name`)||"Your own fat"},()=>Rc(a))})}async function yR(t,e){await ba(t),zt("own_fats",e);let n=et("own_fats","/fats").findIndex(o=>o.id===e);I(B(`f-own_fats-fats-${n}-name`))}var vR=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Rc(t){let e=(n,o,i,s=!1)=>h({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${E("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:O("own_fats",`${t}/kind`)||void 0,answers:vR,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${kR(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${M({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>xR(t)})}`}function kR(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,a=!1)=>h({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function xR(t){let e=(o,i,s,a)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>j("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${E("own_fats",d)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>h({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${TR(`${t}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var o$=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function TR(t){let e=Object.keys(g("own_fats",t)??{}),n=o$.filter(([a])=>!e.includes(a)),o=a=>o$.find(([d])=>d===a)?.[1]??a,i=a=>`${t}/${N(a)}`,s=a=>{let d=Array.isArray(g("own_fats",i(a))),c=(p,m)=>h({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>j("own_fats",`${o(a)} removed`,e.length>1?i(a):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${E("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${wt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&j("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}function Ei(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[a]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=a;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:a,place:"batches.0",whippings:c?.whippings??[],whole:t}}var K=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,RR=t=>t.cut?["loaf","loaves"]:["cast","casts"];function Qe(t,{pieces:e,casts:n}){let o=t.cut?K(e,"bar"):K(e,"piece");return n===e?o:`${o} from ${K(n,...RR(t))}`}var SR=t=>t===1?"once":`${t} times`,Sc=t=>t.batches.length>1,Jt=t=>t.pieces.batches>1;function _t(t){return Jt(t.whole)?`one batch, ${Qe(t.whole,t.batch)}`:""}var s$=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function Ac(t,e){return s$(t)?`${Qe(t.whole,e)}${e.count>1?`, whipped ${SR(e.count)}`:""}`:""}function nl(t,e){let n=Ac(t,e);return n&&`one whipping: ${n}`}var r$=t=>Jt(t.whole)||s$(t),ol=(t,e)=>`${K(t,"filling")} of ${K(e,"cavity","cavities")}`;var a$=t=>[...l.files?.runs??[],...l.files?.orders??[],...l.files?.formulas??[]].find(e=>e.file===t)?.name||t;function il(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${Mt(e.map(a$))}.</p>`:u}function Ni(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Mt(e.map(a$))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var tr={of:"own_fats",at:"/fats",least:1},sl={of:"own_tips",at:"/tips",least:1},Xo=({of:t,at:e})=>et(t,e);function l$(t){return d$(t,tr,"fats",e=>{let n=`/fats/${e}`;return M({of:"own_fats",name:String(Xo(tr)[e].id),pointers:[n],summary:r`<span
        >${O("own_fats",`${n}/name`)||"Without a name"}<small
          >${AR(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Rc(n)})})}function AR(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function u$(t){return d$(t,sl,"tips",e=>{let n=`/tips/${e}`;return r`<div class="tip-row">
      ${N_(Xo(sl)[e])}
      ${M({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:O("own_tips",`${n}/name`)||"Without a name",body:()=>tl({of:"own_tips",at:n})})}
    </div>`})}function d$(t,e,n,o){let i=l.files?.[n].find(({file:a})=>a===t.file),s=a=>String(Xo(e)[a].name||`number ${a+1}`);return r`${mn(t)} ${fn(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${Ni(i)}
      ${t.shipped?r`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${Xo(e).map((a,d)=>r`<div class="held" id=${W(e,d)} role="group" aria-label=${s(d)}>
              ${o(d)} ${J(e,d,s(d))}
            </div>`)}
      </div>
    </section>`}var Dc=(t,e)=>({...el,id:Ka(t,e),name:t});function c$(t){let e=Dc(t,[...l.fats,...Xo(tr)]);H(tr,e,t),zt("own_fats",String(e.id)),I(ot("own_fats",`/fats/${Xo(tr).length-1}/source`))}var Pc=t=>({name:t});function p$(t){H(sl,Pc(t),t);let e=Xo(sl).length-1;zt("own_tips",`tip ${e}`),I(Je(Pe("own_tips",`/tips/${e}`,"own")))}var m$=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},rl=Ua(class extends Mi{constructor(t){if(super(t),t.type!==Mn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],a=0;for(let d of t)i[a]=o?o(d,a):a,s[a]=n(d,a),a++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=A_(t),{values:s,keys:a}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=a,s;let d=this.ut??=[],c=[],p,m,_=0,b=i.length-1,w=0,x=s.length-1;for(;_<=b&&w<=x;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(d[_]===a[w])c[w]=uo(i[_],s[w]),_++,w++;else if(d[b]===a[x])c[x]=uo(i[b],s[x]),b--,x--;else if(d[_]===a[x])c[x]=uo(i[_],s[x]),Fi(t,c[x+1],i[_]),_++,x--;else if(d[b]===a[w])c[w]=uo(i[b],s[w]),Fi(t,i[_],i[b]),b--,w++;else if(p===void 0&&(p=m$(a,w,x),m=m$(d,_,b)),p.has(d[_]))if(p.has(d[b])){let G=m.get(a[w]),Wt=G!==void 0?i[G]:null;if(Wt===null){let To=Fi(t,i[_]);uo(To,s[w]),c[w]=To}else c[w]=uo(Wt,s[w]),Fi(t,i[_],Wt),i[G]=null;w++}else Ja(i[b]),b--;else Ja(i[_]),_++;for(;w<=x;){let G=Fi(t,c[x+1]);uo(G,s[w]),c[w++]=G}for(;_<=b;){let G=i[_++];G!==null&&Ja(G)}return this.ut=a,za(t,c),Nt}});async function ct(t){f({list_complaint:""});try{await t()}catch(e){f({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof y&&await xe().catch(()=>{})}}var Oc=()=>{ct(lg)},f$=()=>{ct(ug)};function Oe(t){return r`<h1 tabindex="-1">${t}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Ms()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${Oc}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var h$=new Map,g$=Promise.resolve();function _$(t,e=""){let n=`${t}
${e}`,o=h$.get(n);return o||(o=g$.then(()=>DR(t)),g$=o,h$.set(n,o)),o}async function DR(t){try{let e=await en({kind:"glb",gauge:{file:t}}),n=xi(await e.arrayBuffer());return Bs(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof y)return;throw e}}var Mc=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{_$(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void ye(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];ye(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Fs(a)} />
      </svg>`,this)}};customElements.define("mould-picture",Mc);var Ge=(t,e)=>r`<ul class="cards">
    ${rl(t,({file:n})=>n,e)}
  </ul>`;function hn(t){let{one:e,facts:n,picture:o,open:i}=t,s=l.list_open?.file===e.file?l.list_open:void 0,a=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{ct(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${a}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${a}"
      @click=${()=>PR(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?OR(t,s):u}
  </li>`}function PR({one:t},e){let{file:n,name:o,note:i}=t;f({list_open:e?{file:n,name:o,note:i,stem:ki(n)}:void 0})}function OR(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{ct(()=>FR(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&ki(o.file)===e.stem,a=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{ct(()=>BR(t,e))};return r`<div class="acts">
    ${il(o)} ${n.called?Fc(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Fc("Note",e,"note")} ${Fc("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${s||!a||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{ct(()=>$$(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?MR(o,e):u}
  </div>`}function Fc(t,e,n){let o=`list-${n}`,i=s=>v(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${A(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function MR(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{ct(()=>$$(t,e,!0))}}>Remove it even so</button>
  </div>`}async function FR(t,e){let n=await dg(t,e),o=l.files?.[t.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:ki(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function BR({kind:t,one:e},{name:n,note:o,stem:i}){await pg(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function $$(t,e,n){let o=t.used_by??[];if(o.length&&!n)return v(e,{used_by:o});try{await mg(t,n),f({list_open:void 0})}catch(i){let s=i instanceof y?i.answer.used_by:void 0;if(!s)throw i;v(e,{used_by:s})}}function al(t,e,n){let o=[...l.files?.[t.list]??[]].sort((s,a)=>Number(s.shipped)-Number(a.shipped));return o.length?Ge(o,s=>hn({kind:t,one:s,facts:CR(s),open:()=>n(s.file)})):r`<p class="aside">None yet. ${e}</p>`}var b$=4;function CR({holds:t=[],changed:e}){let n=t.length-b$,o=n>0?[...t.slice(0,b$),`${n} more`]:t;return[o.length?Mt(o):"",e?`changed ${U(e)}`:""].filter(Boolean)}var er="";function ll({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(er.trim()),er="",V()})},s=a=>{er=a.target.value,V()};return r`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${A(er)} @input=${s} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!er.trim()} @click=${i}>${e}</button>
  </div>`}function Me(t){let e=l.removed.filter(n=>n.kind===t);return e.length?r`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(LR)}
    </ul>
  </details>`:u}function LR(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=l.open.has(n);return r`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${U(t.removed_at)}, kept until ${U(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{ct(()=>fg(t))}}>
        Bring back
      </button>
      ${o?r`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{ct(()=>hg(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>Ct("open",n)}>Keep it</button>`:r`<button type="button" aria-label="Delete ${e} ..." @click=${()=>Ct("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function y$(){let t=no();return r`${Oe("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${al(nn,"Each file is named by the formulas that use its fats.",e=>Os(nn,e))}
      ${t?l$(t):u}
      ${ll({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(c$(e)):wa(nn,Dc(e,l.fats)),tried:ct})}
    </section>
    ${IR()} ${Me("fats")}`}var w$="fats that are listed";function IR(){let t=l.finding?.key===w$?l.finding.text:"",e=l.fats.filter(n=>Fn(n,t)!==void 0);return r`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${A(t)}
          @input=${n=>f({finding:{key:w$,text:n.target.value}})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${e.map(n=>WR(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:r`<p class="hint">None is called so.</p>`}
  </section>`}function WR(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,s=Fn(t,e),a=d=>R(d,1);return r`<tr>
    <th scope="row">${t.name}${s&&s!==t.name?r` <small>${s}</small>`:u}</th>
    <td>${a(i)} <small>${a(n)} to ${a(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var v$=t=>t.goes_into==="lye",k$=({role:t})=>t==="alkali",ER=t=>k$(t)?"down":"nearest",ti=(t,e)=>Y(t,e,ER(e));function ul(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>v$(i)),n=({one:i})=>i.role==="water",o=({one:i})=>k$(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function x$(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!v$(e))}function Bc(t){let e=O(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${qR(t)}
    ${M({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var NR=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],T$={after:"",mass:""},R$=3,jR={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:R$},()=>T$)}}};function HR(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function qR(t){let e=HR(t);return r`${T({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:NR,puts:o=>({...ht(t,"",["drying","water_lost_in_cure"]),...jR[o]})})}
  ${e==="share"?r`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?UR(t):u}`}function UR(t){let e={of:t,at:"/drying/weighings",least:R$};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(e).map((n,o)=>r`<div class="row named" id=${W(e,o)}>
          ${h({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${J(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Z(e,"One more weighing",()=>H(e,T$,"weighing"))}`}var zR=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],dl=t=>ao(t).map(e=>[e.id,e.name]),S$=["unsaid","Not given"],A$=["none","Holds none"],D$=t=>t===void 0?"unsaid":t==="none"?"none":"some",JR=t=>e=>e==="some"?t:e==="none"?"none":void 0;function P$(t,e){return Cc(t,`${e}/contains_fat`,[S$,A$,["some","Holds fat"]],dl(t))}function Cc(t,e,n,o){let i=D$(g(t,e)),s=n.some(([a])=>a===i)?i:void 0;return r`${T({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:JR({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${wt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var KR=[S$,A$,["some","Holds acid"],["typed","By what it takes up"]],VR={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Lc(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":D$(g(t,n));return r`${T({of:t,question:"Acid in it",at:n,chosen:o,answers:KR,puts:i=>VR[i]})}
  ${o==="some"?r`<div class="row">
          ${wt({label:"Which acid",of:t,at:`${n}/acid`,answers:zR.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Ic(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Ic(t,e,n){let o=g(t,e)===!0?"yes":"no";return T({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var QR=["tsp/lb","tbsp/lb","tsp/kg"],cl=["%","g/kg",...QR].flatMap(t=>[`${t} of fats`,`${t} of batter`]),M$=[...cl,"% of finished soap","g/kg of finished soap"];function O$(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function pl(t,e,n,o,i=!1){let s=Q(t,e),[a,d]=O$(O(t,e),o),c=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&d)&&me(t,e,s,a.trim()?`${n}: of what`:n);let m=Ut(t,e),_=(w,x)=>{let G=`${w.trim()} ${x}`.trim();tt(t,e,i&&!w.trim()?void 0:G),V()},b=w=>{let x=w.target.value,[G,Wt]=O$(x,o);f({typed:{key:s,text:x}}),_(G,Wt||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${A(c)}
        @input=${b}
        @blur=${Go}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>_(c,w.target.value)}
      >
        <option value="" .selected=${A(d==="")}>of what?</option>
        ${o.map(w=>r`<option value=${w} .selected=${A(w===d)}>${w}</option>`)}
      </select>
    </div>
    ${gt(s,m)}
  </div>`}function GR(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var YR=.01+1e-9;function ji(t,e){let{sum:n,unread:o}=GR(e),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=YR?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var F$=(t,e)=>ao(t).find(n=>n.id===e)?.name??e,nr=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),ml=t=>k(nr(t));function Nc(t){let e=ml(t),n=l.picking?.of===t&&l.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>ZR(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?ji("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:me(t,"/fats",Q(t,"/fats"),"The fats")}
    ${n?C$(t):Z(nr(t),"Add a fat",()=>B$(t,e.length))} ${r0(t)}
  </section>`}function ZR(t,e,n){let o=`/fats/${e}`,i=F$(t,String(n[e].fat??""))||"Which fat?",s=Rt(t,`${o}/fat`)??Rt(t,o),a=l.picking?.of===t&&l.picking.row===e;return r`<li class="formula-row" id=${W(nr(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${Q(t,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?Wc():B$(t,e)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${J(nr(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?C$(t):u}
    ${i$(t,String(n[e].fat??""))}
    ${M({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${e0(n[e])}`,body:()=>i0(t,e)})}
  </li>`}function B$(t,e){f({picking:{of:t,row:e,text:""}}),I(B("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Wc(){let t=l.picking;f({picking:void 0}),t&&I(ot(t.of,t.row<ml(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Ec(t,e){let{row:n}=l.picking,o=ml(t);f({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};Vs(nr(t),`${F$(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ot(t,`/fats/${n}/share`))}function C$(t){let{row:e,text:n}=l.picking,o=ml(t).map(m=>m.fat),i=XR(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),a=s.find(m=>m.id===l.picking.lit),d=m=>{f({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=a?s.indexOf(a)+m:m>0?0:s.length-1,b=s[(_+s.length)%s.length];b&&(f({picking:{of:t,row:e,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Wc(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(w=>Qt(w.name)===Qt(n.trim())),b=a??(s.length===1?s[0]:_);m.key==="Enter"&&b&&Ec(t,b.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${a?`fat-${a.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Wc}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${l.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":"The list of fats is on its way ..."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,b=Fn(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${_}
          aria-selected=${m===a||o[e]===m.id?"true":"false"}
          @click=${()=>Ec(t,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{t0(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function XR(t,e){let n=ao(t).filter(a=>Fn(a,e)!==void 0),o=e.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(d=>Fn(a,d)!==void 0).length,s=Math.max(...ao(t).map(i));return s?ao(t).filter(a=>i(a)===s):[]}async function t0(t,e){if(!await ba(t))return;let o=e.trim(),i=Ka(o,[...l.fats,...et("own_fats","/fats")]),s=et("own_fats","/fats").length;tt("own_fats",`/fats/${s}`,{...el,id:i,name:o}),Ec(t,i),zt("own_fats",i),I(ot("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function e0(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var n0=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],o0={published:void 0,one:"",range:{low:"",typical:"",high:""}};function i0(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,a=(d,c)=>h({label:d,of:t,at:c,number:!0,short:!0});return r` ${h({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${T({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:n0,puts:d=>o0[d],hint:s0(t,O(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Ic(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function s0(t,e){let n=ao(t).find(a=>a.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function r0(t){let e=Ws(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=O(t,"/own_fats");return M({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var a0=t=>ft.includes(t);function fl(){let t=l.complaint;return!t?.field||t.lye_heavy?!1:Ci().some(({of:e,at:n})=>De(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function or(){let t=l.complaint?Ci():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>l0(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function l0({of:t,id:e,folds:n}){for(let o of n)ut(o);f({has_asked:!0}),a0(t)?(l.view!=="formula"||l.formula_of!==t)&&ne(t):l.view!=="set-up"&&!(t==="own_fats"&&l.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>I(B(e)))}var L$="danger-of-superfat";function jc(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:lo(t).length?L$:void 0})}
    </div>
    ${Us(t,L$)} ${u0(t)} ${h0(t,e)}
  </section>`}function u0(t){let e=et(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${T({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>d0(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>c0(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${ji("The two",e.map(i=>i.share))}
        </p>`:u}`}function d0(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function c0(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),a=Rt(t,i)??Rt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?h({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${M({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${p0(e.purity_range)}`,body:()=>m0(t,i)})}
  </div>`}var p0=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function m0(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${T({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${h({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var f0={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function h0(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(f0);return r`${T({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:_0(e)})}
    <div class="row">${n.map(s=>g0(t,s))}</div>`}function g0(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function _0(t){if(!(!t||l.is_old))return`It now makes a strength of ${R(t.lye_strength_percent,1)} %; ${R(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(t.water_percent_of_fats,1)} % of the fats.`}function fo(t,e,n){let o=$0(t,e);return M({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${w0(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${I$(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>y0(t,i,s))}
        ${h({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function $0(t,e){let n=et(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Hc={name:"",share:""},b0={unsaid:void 0,one:"",many:[Hc]};function w0(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...Hc,name:o}]:b0[a];return r`${T({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?h({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${I$(t,e,"INCI name","One more INCI name")}`:u}`}function y0(t,e,n){return T({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function I$(t,e,n,o,i){let s={of:t,at:e};return r`${k(s).map((a,d)=>r`<div class="row named" id=${W(s,d)}>
        ${h({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${h({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${J(s,d,String(a.name||`${n} ${d+1}`))}
      </div>`)}
  ${Z(s,o,()=>H(s,Hc,n))}`}var v0=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:F0},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:S0},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:A0},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:D0}];function qc(t){return v0.map(e=>{let n={of:t,at:`/${e.list}`},o=k(n),i=(s,a)=>r`<li class="formula-row" id=${W(n,a)}>
        ${x0(t,e,n,s,a)} ${e.row(t,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Z(n,e.add,()=>H(n,k0(e),e.add.replace("Add ","")))}
    </section>`})}function k0(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function x0(t,e,n,o,i){let s=`/${e.list}/${i}`,a=Rt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:pl(t,`${s}/rate`,"How much",cl)}
      ${J(n,i,d)}
    </div>`}function W$(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return T({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function E$(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${W$(t,e,R0,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?T({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:T0,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var T0=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],R0=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Uc(t,e,n){let o=(a,d,c)=>a?`${d}${String(a)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${e}/${a}`);return M({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${pl(t,`${e}/limit`,"The most that the supplier's document allows",M$,!0)}`})}function zc(t,e,n,o){let i=(a,d)=>a===void 0?"":a==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return M({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${P$(t,e)} ${o?Lc(t,e):u}`})}var hl=(t,e,n)=>fo(t,e,String(n.name||"it"));function S0(t,e,n){return r`${E$(t,e,!0)}
    <div class="folds">${zc(t,e,n,!0)} ${Uc(t,e,n)} ${hl(t,e,n)}</div>`}function N$(t,e,n){return M({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>E$(t,e,!1)})}function A0(t,e,n){return r`<div class="folds">
    ${Uc(t,e,n)} ${hl(t,e,n)} ${N$(t,e,n)} ${zc(t,e,n,!1)}
  </div>`}function D0(t,e,n){return r`${O0(t,e)}
    <div class="folds">
      ${Uc(t,e,n)} ${hl(t,e,n)} ${N$(t,e,n)} ${zc(t,e,n,!0)}
    </div>`}var P0=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function O0(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${T({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${wt({label:"Which oil",of:t,at:`${n}/fat`,answers:dl(t),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:P0,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var M0=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function F0(t,e,n){let o=(i,s,a)=>M({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:a});return r`${C0(t,e,n)}
    ${W$(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${I0(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>B0(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Lc(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${hl(t,e,n)}
    </div>`}function B0(t,e){let n=g(t,e)===!0?"ice":"liquid";return T({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function C0(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...ht(t,e,["replaces","rate"]),[s]:""});return r`${T({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:L0,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${h({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?pl(t,`${e}/rate`,"Rate",cl):u}`}var L0=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function I0(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>h({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${T({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Cc(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...dl(t)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${wt({label:"Built-in figures of",of:t,at:n,answers:M0.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var ir=()=>Object.keys(g("studio","/cups")??{}),sr=()=>ir().length===1?{net:""}:ir().length?{cup:"",net:""}:{holds:"",net:""},j$="\0another";function rr(t,e="Cup holds"){let n=`${t}/holds`,o=ir();if(g("run",n)!==void 0||!o.length)return r`${h({label:e,at:n,unit:"ml",short:!0})}${o.length?W0(t):u}`;let i=a=>a===j$?j("run","Another cup",t,{...Jc(t),holds:""},ot("run",n)):j("run",`Cup: ${a}`,t,{...Jc(t),cup:a}),s=a=>O("studio",`/cups/${N(a)}`);return wt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[j$,"Another cup"]],unsaid:"choose ...",chosen:O("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function Jc(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var W0=t=>r`<button type="button" @click=${()=>j("run","A cup of the studio",t,Jc(t))}>
    A cup of my studio
  </button>`;function q$(){return at()?r`<div class="row">
    ${ir().map(t=>h({of:"studio",label:`${t} holds`,at:`/cups/${N(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${E0()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function E0(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||H$();e.value="",j("studio",`${n} added`,`/cups/${N(n)}`,"",ot("studio",`/cups/${N(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${H$()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function H$(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!ir().includes(e))return e}}var N0=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),Kc=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function gl(t){let{run:e}=Kc(t);return M({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${at()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${mo("How warm",[Kc(t)])} ${E("run",e)} ${j0(t)}`})}function j0(t){let{run:e,studio:n}=Kc(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>It(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${wt({label:"The lye cools in",...Gs(a),answers:N0,unsaid:"not given",optional:!0})}
  </div>`}var he=()=>$(l.run.now,"/pipe")!==void 0;function U$(){let t=e=>{let n=F(e,"/pipe",{formula:"",fills_headspace:"",whip:sr()});return at()?n:F(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ut("set-up pipe"),fe("run","Topping added",t,B("lane-pipe"))}function H0(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:F(o,i,void 0),t)}function q0(){fe("run","Topping removed",H0,B("topping-back"))}function z$(){let t=l.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||he()?u:r`<button type="button" id="topping-back" @click=${Ps}>Bring the topping back</button>`}function Vc(){return r`${G0()} ${gl("pipe")}
    <p class="choice"><button type="button" @click=${q0}>Take the topping away</button></p>`}var U0=["trials","beads","envelope"];function Qc(t){return U0.every(e=>g("run",`/pipe/${e}`)===void 0)&&me("run","/pipe",`${Q("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${E("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Yt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:sr()},body:z0})}
      ${Yt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:J0})}
    </div>
    ${Yt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:e$,body:()=>n$(t)})}
    ${t?V0(t):u}`}function z0(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${h({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${J(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Z(t,"One more trial",()=>H(t,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${rr("/pipe/trials/weigh_cup")}
    </div>
    ${E("run","/pipe/trials/weigh_cup")}`}function J0(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${T({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var K0={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function V0(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>L({key:`pipe.by.${i}`,label:K0[i],note:o(a),shown:Lt(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${Q0(t)}`}function Q0(t){let e=t.visible_by?.suggested_correction;if(!e||l.is_old)return u;let n=R(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(l.run.now,`${o}/correction`)!==e.correction,a=()=>j("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function Gc(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${rr("/pipe/whip")}
    </div>
    ${E("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function G0(){let t="/pipe/pace",e=(n,o,i,s=!1)=>h({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return M({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Yt({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function Y0(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function ar(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,Y0(t,e))}>It is really so: keep it</button>`:u}var Zc=500,Z0=()=>$(l.run.now,"/cut")===void 0&&X0()>=Zc,X0=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0,_l={run:"/cut/kerf",studio:"/kerf"};function J$(t){ut("set-up cut"),j("run","Cut","/cut",{bar:Yc[t],...at()?{}:{kerf:""}},ot("run",`/cut/bar/${Object.keys(Yc[t])[0]}`))}function tS(){j("run","Left whole","/cut",void 0,B("cut-into-bars"))}function K$(){return Z0()?r`<button type="button" id="cut-into-bars" @click=${()=>J$("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>J$("slab")}>Cut it into bars</button>`:u}var Yc={loaf:{thickness:""},slab:{length:"",width:""}};function eS(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var nS={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function V$(){let t=eS(),e=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=O("run","/cut/along");return r` ${T({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Yc[o]})}
    <div class="row">
      ${t==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${It(_l,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${mo("Kerf",[_l])}</p>
    ${t?T({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:nS[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${tS}>Leave it whole</button>`}var $l=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function bl(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${A(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function oS({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-t.brim-2*n+i,d=a-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>S`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Fs(e,a))}${p("side",Fs(t.loops))}
    </svg>
  </div>`}function Hi(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${oS(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${D(Lt(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${D(Lt(l.units,i.total_ml))} together`:u},
      ${D(Ft(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${D(Lt(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var iS={mm:"in",g:"oz","\xB0C":"\xB0F"},sS={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function wl(t,e,n=""){let o=Xc(t);if(o)return o.unit??"";let i=Se($(z(),t));return sS[e]?.test(i)?i:n||(l.units==="us"?iS[e]??e:e)}var yl=()=>f({typed:void 0}),qi=t=>`d${t.replaceAll("/","-")}`,Xc=t=>l.typed?.key===qi(t)?l.typed:void 0,vl=t=>Xc(t)?.text??String($(z(),t)??"");function ho(t){let{complaint:e}=it();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function tp(t,e,n,o){let{pointer:i}=t,s=a=>{let d=a.target.value,c=t.unit?wl(i,t.unit,t.unit_before):"";f({typed:{key:qi(i),text:d,unit:c}}),At(i,rS(t,d,c))};return r`<input
    id=${qi(i)}
    .value=${A(vl(i))}
    @input=${s}
    @blur=${yl}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${ho(i)?"true":"false"}
  />`}function rS(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Tt(e)?`${e.trim()} ${n}`:e}function ge(t,e){let n=qi(t.pointer),o=ho(t.pointer),i=aS(t.pointer)??t.hint,s=t.unit?` (${wl(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${tp(t,o||i?`${n}-said`:void 0,e)}
    ${gt(n,o,i)}
  </div>`}function aS(t){let e=$(z(),t),n=Xc(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function kl(t){let e=t.toLowerCase(),{file:n,shipped:o}=it().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function lr(t){let{open:e}=it();try{if(await on(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Hr()})}catch(n){if(!(n instanceof y))throw n;return rc(n)}l.run.file&&(He(),pt()),t(e.file)}var In="/shape/points",Q$=500,go=(t,e)=>[In,t,...e?[e]:[]].join("/"),G$=t=>Array.from({length:t.least},()=>({}));function Y$(t){let e=le(z(),In),n=uS(),{complaint:o}=it(),i=o?.field===In&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${wl(go(-1,s.name),s.unit,Z$(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,a)=>lS(t,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=Q$} @click=${()=>Tl(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function lS(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=dS(e),s=a=>{let{name:d,label:c,unit:p}=t.columns[a],m={label:c,pointer:go(e,d),unit:p,unit_before:Z$(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return tp(m,i?`point-${e}-said`:void 0,cS(t,e,a),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Tl(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>X$(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function uS(){let t=[...ws(z()),...na(z())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function dS(t){let{complaint:e}=it();return ho(go(t))??(e?.about===go(t)?e.line:void 0)}function Z$(t,e,n){let o=(i,s)=>Se($(z(),go(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function xl(t,e){queueMicrotask(()=>document.getElementById(qi(go(t,e)))?.focus())}function Tl(t,e){let n=[...le(z(),In)];n.length>=Q$||(n.splice(e,0,{}),yl(),At(In,n),xl(e,t.columns[0].name))}function X$(t,e,n=0){let o=le(z(),In).filter((i,s)=>s!==e);yl(),At(In,o.length?o:[{}]),xl(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function cS(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let a=!vl(go(e,o))&&!vl(go(e,i));if(s.key==="Enter"&&s.shiftKey)Tl(t,e+1);else if(s.key==="Enter"&&n===0)xl(e,i);else if(s.key==="Enter"&&e+1<le(z(),In).length)xl(e+1,o);else if(s.key==="Enter")Tl(t,e+1);else if(s.key==="Backspace"&&a&&le(z(),In).length>1)X$(t,e,e>0?1:0);else return;s.preventDefault()}}var ep={weighings:[""]},np=/\.(3mf|gltf|glb)$/i;function Rl(t){let e=qn(t);return e?{kind:t,points:G$(e)}:{kind:t}}var pS=()=>At("/water",ep),gn=t=>Ce(z(),t),ur=()=>bs(z());function tb(t){let{open:e,answer:n,is_old:o}=it();return r`${mn(e,()=>{lr(t)})} ${fn(e)}
    ${e.shipped?u:Ni(l.files?.moulds.find(i=>i.file===e.file))}
    ${gn("shape")&&gn("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${gn("shape")?dt("Shape",ur(),Object.entries(Zf),mS):u}
    <div class="beside ${qn(ur())?"rows":""}">
      <div>
        ${op()} ${gn("shape")?hS():u} ${gn("mesh")?gS():u}
        ${ip()} ${gn("water")?$S():u} ${wS()}
      </div>
      <div class="stays">${Hi(n,o,nb())} ${yS(t)}</div>
    </div>`}function mS(t){let e={...it().shapes,[ur()]:z().shape};v(it(),{shapes:e,answer:void 0}),At("/shape",e[t]??Rl(t))}function fS(){let{shipped:t,file:e}=it().open;return t?l.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function op(){let t=fS();return ge({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function hS(){let t=ur(),e=qn(t);return r`${mi(t).length?r`<div class="row">
          ${mi(t).map(n=>ge({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?Y$(e):u}`}function ip(t=Hu(z())){return r`<div class="row">
      ${t?u:ge({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${ge({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${ge({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${ge({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var sp=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],rp=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function gS(){let t=o=>String($(z(),`/mesh/${o}`)??""),e=(o,i,s)=>{let a=ho(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${dt(o,t(i),s,d=>At(`/mesh/${i}`,d||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=ho("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${np.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",sp)} ${e("Which way is up","up",rp)}
    ${t("role")==="body"?_S():u}
    <div class="row">
      ${ge({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${ge({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function _S(){let t=$(z(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${dt("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>At("/mesh/on_board",e==="yes"?!0:void 0))}`}function $S(){let t=$(z(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>At("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(z(),"/water/weighed_in"),i=e===void 0||e==="brim"?ho("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${ge({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${dt("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?ge({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?ge({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${dt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>At("/water/weighed_in",s))}
    <div class="row">
      ${le(z(),"/water/weighings").map((s,a)=>ge({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},bS(a)))}
    </div>
    ${it().complaint?.field==="/water/weighings"?r`<p class="complaint">${it().complaint.line}</p>`:u}
    <button type="button" @click=${eb}>One more round</button>`}function eb(){let t=le(z(),"/water/weighings").length;At(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var bS=t=>e=>{e.key==="Enter"&&(t+1===le(z(),"/water/weighings").length?eb():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function wS(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${gn("shape")?u:t("Add measures, as a check",()=>At("/shape",Rl("block")))}
    ${gn("shape")&&gn("mesh")?t("Leave the measures out",()=>At("/shape",void 0)):u}
    ${gn("water")?t("Leave the water out",()=>At("/water",void 0)):t("Add weighed water",pS)}
  </div>`}function nb(){let t=na(z()).length;return t?[...ys(z()),t===1?"the other number of a point":`the other numbers of ${t} points`]:ys(z())}function yS(t){let e=String(z().name??"").trim(),n=kl(e),{open:o,answer:i,is_old:s,complaint:a}=it(),d=i&&!s&&!a&&!nb().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{lr(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${ap(e,n)}
    ${a?r`<p class="alarm" role="status">${vS(a.field)}${a.line}</p>
            ${ar(z(),a.keep,At)}`:u}`}var ap=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function vS(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=mi(ur()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var kS=200*2**20;async function ob(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:e}),At("/name",t.name.replace(/\.\w+$/,"")),t.size>kS){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return v(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await mf(t,o=>v(e,{share:o}));v(e,{share:1,upload:n.file}),await sb(e)}catch(n){v(e,{complaint:n instanceof y?n.message:String(n)})}}async function sb(t){let e=t.questions+1;v(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let a=await Ti({file:n,unit:o,role:i,up:s});e===t.questions&&v(t,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof y))throw a;if(e!==t.questions)return;let d=o?t.sizes:SS(a.complaint),c=d.length&&!o?void 0:C(a.complaint);v(t,{sizes:d,complaint:c,is_measuring:!1})}}async function xS(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await lf({file:n,unit:o,up:i});e===t.questions&&v(t,{inspection:s})}catch(s){if(!(s instanceof y))throw s;e===t.questions&&v(t,{complaint:C(s.complaint)})}}function TS(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(RS)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{xS(t)}}>List every defect of the mesh</button>`}var RS=({text:t})=>r`<li>${t}</li>`;function SS({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function lp(t,e){v(t,e),sb(t)}function rb(t,e){let n=a=>{let d=a.target;ob(d.files?.[0]),d.value=""},o=a=>{a.preventDefault(),ob(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?AS(l.mesh,t,e):u}`}function AS(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!np.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${dt("Unit of the file's numbers",t.unit,i,s=>lp(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?TS(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${dt("Role",t.role??t.answer?.gauge.role,sp,s=>lp(t,{role:s}))}
            <h4>Which way is up</h4>
            ${dt("Up",t.up??"",rp,s=>lp(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${Hi(t.answer)} ${DS(t,e,n)}`:u}`}var ab=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function DS(t,e,n){let o=String(z().name??"").trim(),i=kl(o),s=o&&!i&&!t.is_keeping;return r`${op()} ${ip(ab(t))} ${ap(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>ib(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>ib(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function ib(t,e,n){v(t,{is_keeping:!0});try{let o=PS(t,await ff(t.upload,MS(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await OS(o))return e(o);Pi(o,"mesh",it().title),await lr(n),v(t,{complaint:l.mould?.complaint?.line})}catch(o){v(t,{complaint:o instanceof y?o.message:String(o)})}v(t,{is_keeping:!1})}function PS(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=z();return{...i,...ab(t)||o===void 0?{}:{cavities:o},mesh:n}}async function OS(t){try{return await jn({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof y&&e.status===422)return!1;throw e}}var MS=t=>fi(t.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var Sl={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},lb={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function ub(t){xt(),ln();let e={...lb,shape:Rl("block")};t==="mesh"?Pi(lb,"mesh",Sl[t]):Pi(t==="water"?{...e,water:ep}:e,"form",Sl[t]),Dl()}async function db(t,e){ln();let n=await c_(t,e);return n&&Dl(),n}async function Al(t){ln(),await p_(t)&&Dl()}function FS(t){Pi(t,"form","More about this mould"),Dl()}function Dl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function cb(t){if(!l.mould)return;let{way:e,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?rb(t,FS):tb(t)}
  </section>`}var up=()=>f({chosen_mould:void 0});function dr(t,e){xt();let n=l.files?.moulds.find(s=>s.file===t),o=l.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};f({chosen_mould:i}),pb(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var BS=2e3;async function pb(t){if(t===l.chosen_mould)try{v(t,{answer:await Ti({file:t.file})}),v(t,{complaint:void 0})}catch(e){v(t,{complaint:e instanceof y?e.message:String(e)}),e instanceof y&&e.may_pass&&window.setTimeout(()=>{pb(t)},BS)}}var CS=t=>l.files?.moulds.find(e=>e.file===t);function mb(t,e){let n=()=>e(async()=>{await db(t.file,t.shipped)&&up()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${il(CS(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?Hi(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:WS(t,e)}
    </div>
  </section>`}var fb=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=Zc;function LS(t){let e=fb(t)?t.slice.trim():"";return Tt(e)?`${e} mm`:e||void 0}var IS=t=>r`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${A(t.slice)}
      @input=${e=>v(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function WS(t,e){let n=$l(t.sell),o=LS(t),i=s=>()=>e(()=>Na({mould:t.file,name:t.name,formula:s,sell:n,slice:o}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${bl("mould-sell",t.sell,s=>v(t,{sell:s}))}
      ${fb(t)?IS(t):u}
    </div>
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(s=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(s.file)}>
              <b>${s.name}</b><span>${s.note||s.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function cr(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:s,chosen_mould:a,stock:d}=l;if(t!=="reading")return wn(t)?{name:t,file:e.file,of:e}:t==="moulds"&&s?{name:"describing",file:s.open.id,of:s}:t==="moulds"&&a?{name:"chosen",file:a.file,of:a}:t==="order"?{name:t,file:n?.open.file,of:n}:t==="trail"?{name:t,file:d.trail?.of}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:ms[o],file:e.file,of:e}}async function gb({name:t,file:e}){let n=xt();if(!(!(t===ms.apart&&l.formulas.apart?.file===e)&&!await ja())&&n())try{await ES(t,e)}catch(i){if(!(i instanceof y||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function ES(t,e=""){let n=t;if(wn(n))return hb(e,n);let o=["pour","pipe"].find(i=>ms[i]===t);if(o){await hb(e,"formula"),l.view==="formula"&&ne(o);return}if(t===ms.apart)return Hs(e);if(t==="order")return qs(e);if(t==="trail"&&e)return Te(e);await NS(t,e)}async function hb(t,e){t===l.run.file||!t?f({view:l.run.file?e:"runs",typed:void 0}):await On(t,e)}async function NS(t,e){let n=t;up(),ln(),f({view:ae(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=da(te).find(i=>i.id===e);t==="describing"&&o&&await Al(o),t==="chosen"&&dr(e),t==="shelf"&&jS(),HS()}function jS(){Eg(),ro()}async function HS(){try{await xe(),La()}catch(t){if(!(t instanceof y))throw t;f({list_complaint:t.message})}}var _e={id:""},Kt,dp=!1,pp=new Map,Pl=JSON.parse(sessionStorage.getItem("left")??"{}");function $b(){let t=cr();dp||!t||Kt&&we(Kt)===we(t)||(Ol(),bb(t))}function bb(t){let e=!Kt||Kt.name===t.name&&Kt.of!==void 0&&Kt.of===t.of;if(Kt=t,e)return Ui();_e={id:crypto.randomUUID(),before:location.hash},pp.set(_e.id,t.of),history.pushState(_e,"",we(t)),requestAnimationFrame(US)}function Ui(){Kt&&(_e.id||(_e={id:crypto.randomUUID()}),pp.set(_e.id,Kt.of),history.replaceState(_e,"",we(Kt)))}var qS="button, input, select, summary, a[href], [tabindex]",cp=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),wb=t=>[...document.querySelectorAll(`#main :is(${qS})`)].filter(e=>cp(e)===t);function Ol(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?Pl[_e.id]={scroll:scrollY}:Pl[_e.id]={scroll:scrollY,words:cp(t),nth:wb(cp(t)).indexOf(t)}}function US(){scrollTo(0,0),document.activeElement?.closest("#main")||yb()}function yb(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function vb(){let{scroll:t,words:e,nth:n=0}=Pl[_e.id]??{scroll:0},o=e===void 0?void 0:wb(e)[n];o?o.focus({preventScroll:!0}):yb(),scrollTo(0,t)}var $e=t=>kb({name:t,file:wn(t)?l.run.file:void 0});async function kb(t){Ol(),await mp(t,()=>{let e=cr();e&&!(Kt&&we(Kt)===we(e))&&bb(e)})}async function mp(t,e){dp=!0;try{await gb(t)}finally{dp=!1,e()}}function xb(t){_e.before===we(t)?history.back():kb(t)}var _b=Promise.resolve();function zS(t,e){Ol();let n=()=>history.state?.id!==t?.id;_b=_b.then(async()=>{if(!e)return Ui();if(n())return;let o=t?pp.get(t.id):void 0,i=[l.run,l.formulas.apart,l.order].find(s=>s&&s===o);await mp(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{Kt=cr(),!n()&&(_e=t??{id:crypto.randomUUID()},Ui(),requestAnimationFrame(vb))})})}function Tb(){history.scrollRestoration="manual",addEventListener("popstate",t=>{Km()||zS(t.state,Ru(location.hash))}),addEventListener("pagehide",()=>{Ol(),sessionStorage.setItem("left",JSON.stringify(Pl))})}async function Rb(){let t=Ru(location.hash);t&&(_e=history.state??{id:""});let e=xt();await s_(_f(t)),t&&e()&&JS(t)&&await mp(t,()=>{Kt=cr(),Ui(),requestAnimationFrame(vb)}),await tc()}var JS=t=>!Kt||we(Kt)===we(t);function zi(t=l.plan?"The figures below are out of date.":"No figures yet."){let e=fl()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${Wn(e.field)}${C(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${hp}>Ask again</button>`:u}
              ${De("run")?ar(l.run.now,e.keep,(n,o)=>tt("run",n,o)):fp(e)}
              ${KS()?r`<button type="button" @click=${gp}>Go to the field</button>`:u}`:u}
    </div>
    ${or()}`}function fp({keep:t}){let{studio:e}=l.beside;return e&&De("studio")?ar(e.now,t,(n,o)=>tt("studio",n,o)):u}function Wn(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function hp(){pt(),l.run.failed&&sn()}function KS(){if(Sb())return!0;let t=dn();return t?document.activeElement!==t:VS()}var VS=()=>l.view!=="set-up"&&De("run")&&l.complaint!==void 0&&l.complaint.field!=="",Sb=()=>["pour","pipe"].find(t=>l.complaint?.file&&l.complaint.field&&De(t));function gp(){let t=dn(),e=Sb();if(t)return Gt(t);e?ne(e):$e("set-up"),QS(()=>Gt(dn()))}function QS(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Ab=()=>[...la().map(t=>mn(t)),...aa().map(fn)];function Db(){let t=l.formula_of,e=l.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Ab()}${zi()}
      <p>Reading the formula ...</p>
      ${$p(t)}`;let n=l.plan&&Ei(l.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Ab()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${GS(t)}</p>
    <div class="choice">${$p(t)}${t==="apart"?YS():u}</div>
    ${Ni(l.files?.formulas.find(i=>i.file===e.file))} ${ZS(t,o,n)} ${Ob(t)}
    ${Nc(t)} ${jc(t,o)} ${qc(t)} ${Bc(t)}
    <div class="choice">${$p(t)}</div>`}var Pb=t=>[Ob(t),Nc(t),jc(t,void 0),qc(t),Bc(t)],_p=()=>String(l.run.now.name??l.run.file);function GS(t){let e=l.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===e&&l.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${_p()}".${n}`:o?`Base and topping of "${_p()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${_p()}".${n}`}function $p(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>xb(e?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function YS(){return r`<button type="button" @click=${()=>{ec("pour")}}>Use it as the base</button> ${he()?r`<button type="button" @click=${()=>{ec("pipe")}}>Use it as the topping</button>`:u}`}function ZS(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...XS(t,n),...t1(t,e)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?po(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${e1(t)}
  </section>`}function XS(t,e){let n=t==="pipe"?Ac(e,e.whippings[0]):"";return n?[["For one whipping",n]]:Jt(e.whole)?[["For one batch",Qe(e.whole,e.batch)]]:[]}function t1(t,e){let n=lo(t).length?" \u26A0":"";return[["Fats",D(q(l.units,e.fats_g))],["Superfat as weighed",`${oe(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...ul(e).map(({one:o})=>[o.name,D(ti(l.units,o))])]}function e1(t){let e=fl()?void 0:l.complaint;if(!e)return r`<div role="status"></div>
      ${or()}`;let n=De(t),o=n&&e.field!==""&&document.activeElement!==dn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Wn(e.field)}${C(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${hp}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>dn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${or()}`}function Ob(t){return r`<section class="card" aria-label="Name">
    ${h({label:"Name",of:t,at:"/name",wide:!0})}
    ${M({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var bp=t=>v(l.new_formula,t);function Mb(){let{name:t,copied:e}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>ct(async()=>{await i(t.trim()),bp({name:"",copied:""})});return r`${Oe("Formulas")}
    <section aria-label="Formulas">
      ${Ge(n,n1)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${A(t)}
            @input=${i=>bp({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(a_)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>bp({copied:i.target.value})}
          >
            <option value="" .selected=${A(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${A(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>l_(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${Me("formula")}`}function n1(t){let e=t.changed?[`changed ${U(t.changed)}`]:[];return hn({kind:Bo,one:t,facts:e,open:()=>Hs(t.file)})}function o1(t){ln(),dr(t,`Saved in ${t}.`)}function Fb(){let{chosen_mould:t}=l;return r`${Oe("Moulds")}
  ${t?mb(t,ct):cb(o1)??r`${a1()} ${i1()}`}`}function i1(){let t=(l.files?.moulds??[]).filter(n=>!n.shipped),e=l.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Ge([...t,...e],s1)} ${Me("mould")}
  </section>`}function s1(t){let e=t.shipped?r1(t.file):d1(t.file),n=()=>Promise.resolve(dr(t.file));return hn({kind:te,one:t,facts:e,picture:t.file,open:n})}var r1=t=>l.catalogue.filter(e=>e.path===t).map(e=>`${D(Lt(l.units,e.brimful_ml))}, ${K(e.cavities,"cavity","cavities")}; ${e.description}`);function a1(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${l1()}
    <div class="choice">
      ${Object.entries(Sl).map(([t,e])=>r`<button type="button" @click=${()=>ub(t)}>${e}</button>`)}
    </div>
  </section>`}function l1(){return da(te).map(t=>{let e=String(vt(t.text)?.name??"").trim()||u1(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>ct(()=>Al(t))}>Continue</button>
        <button type="button" @click=${()=>{Jn(te,t.id),V()}}>Discard it</button>
      </div>
    </div>`})}var u1=({file:t})=>l.files?.moulds.find(e=>e.file===t)?.name;function d1(t){let e=Qd(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[D(Lt(l.units,e.brimful_ml)),K(e.cavities,"cavity","cavities")]:["measuring ..."]}var c1=300,p1=1e3;function Ml(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=l,i=t?.of===e&&t?.wish===n;!i&&!o&&m1();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function yp(){l.quoted&&f({quoted:{...l.quoted,of:void 0}})}var pr,wp=!1;function m1(){let{plan:t,quote_wish:e}=l;wp||pr?.of===t&&pr?.wish===e||(window.clearTimeout(pr?.timer),pr={of:t,wish:e,timer:window.setTimeout(()=>{h1()},l.quoted?c1:0)})}var Fl=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function Bb(t,{numbers:e="",by:n,figure:o}){let i=Fl(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Bl=()=>Bb({file:l.run.file,run:l.run.now},l.quote_wish);function f1(t,{numbers:e=""}){return t.field==="/sell"&&Fl(e)?{...t,file:"",field:"sell"}:t}async function h1(){pr=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=l;if(!(!e||!n||i)){wp=!0;try{let s=await sf(Bb(n,o));t===l.run&&f({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof y))throw s;if(t!==l.run)return;let a=f1(s.complaint,o);f({quoted:{of:e,wish:o,quote:l.quoted?.quote,complaint:a}}),s.may_pass&&window.setTimeout(yp,p1)}finally{wp=!1}}}var g1=300,_1=1e3,kp=t=>{let{by:e,figure:n}=l.quote_wish;return[t.open.now,t.open.file,t.times,e,n,l.plan,No()]},Cb=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function Lb(){let t=qt(),{quoted:e}=t;if(!Rn(t.open.now)||t.open.theirs)return{is_old:!0};let n=Cb(e?.of,kp(t));!n&&!l.is_old&&$1(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:l.is_old||!n||o!==void 0}}function xp(){let{quoted:t}=qt();t&&v(qt(),{quoted:{...t,of:[]}})}function Tp({open:t,times:e}){let{by:n,figure:o}=l.quote_wish,i=Fl(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Cl,vp=!1;function $1(t){let e=kp(t);vp||Cb(Cl?.of,e)||(window.clearTimeout(Cl?.timer),Cl={of:e,timer:window.setTimeout(()=>{b1(t)},t.quoted?g1:0)})}async function b1(t){if(Cl=void 0,t===l.order){vp=!0;try{if(await rn(),await Ee(),await _i(),!Rn(t.open.now))return;let e=kp(t);await w1(t,e)}catch(e){if(!(e instanceof y))throw e}finally{vp=!1,v(t,{})}}}async function w1(t,e){try{v(t,{quoted:{of:e,quote:await rf(Tp(t))}})}catch(n){if(!(n instanceof y))throw n;v(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===l.order&&xp(),_1)}}var Ji={of:"order",at:"/lines",in_order:!0,stays:!0};function Ib(){return r`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${E("order","/lines")} ${k(Ji).map((t,e)=>y1(e))} ${v1()}
  </section>`}var Wb=()=>(l.files?.runs??[]).filter(({shipped:t})=>!t);function Eb(t){let e=kn(qt().open.file,t);return l.files?.runs.find(n=>n.file===e)}var Nb=t=>Eb(t)?.name||t;function jb(t){let e=Qn(qt().open.now).map(({run:n})=>n);return Wb().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function y1(t){let{run:e}=Qn(qt().open.now)[t]??{run:""},n=`/lines/${t}`,o=Eb(e)?.pieces,i=e?Nb(e):`line ${t+1}`;return r`<div class="row" id=${W(Ji,t)} role="group" aria-label=${i}>
    ${wt({of:"order",label:"Run",at:`${n}/run`,answers:jb(e),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${K(o,"piece")}`})}
    ${k(Ji).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${J(Ji,t,i)}
  </div>`}function v1(){let t=jb();return Wb().length?t.length?r`<div class="row">
    ${wt({of:"order",label:k(Ji).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&H(Ji,{run:e},Nb(e))})}
  </div>`:r`${u}`:r`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var k1=300,x1=1e3,Hb=()=>new Date().toDateString(),T1=()=>({file:l.run.file,run:l.run.now});function R1(){let{run:t,plan:e}=l;return{known:l.run_days,rests_on:()=>[l.plan,Hb()],is_ready:e!==void 0&&!l.is_old,written:()=>Promise.resolve(),question:()=>l.planned??T1(),is_open:()=>t===l.run,keep:n=>f({run_days:n})}}function S1(){let{order:t}=l;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,l.plan,No(),Hb()],is_ready:Rn(e.now)&&!e.theirs&&!l.is_old,written:async()=>{await rn(),await Ee(),await _i()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===l.order,keep:n=>v(t,{days:n})}}var Ll=t=>t==="run"?R1():S1(),qb=t=>Ll(t).question(),Ub=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function Ki(t){let e=Ll(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=Ub(n?.of,e.rests_on());!i&&o&&A1(t,e);let s=i?n?.complaint:void 0;return{days:n?.days,complaint:s,is_old:!o||!i||s!==void 0}}function Ap(t){let e=Ll(t);e?.known&&e.keep({...e.known,of:[]})}var Rp=new Map,Sp=new Set;function A1(t,e){let n=e.rests_on(),o=Rp.get(t);Sp.has(t)||Ub(o?.of,n)||(window.clearTimeout(o?.timer),Rp.set(t,{of:n,timer:window.setTimeout(()=>{D1(t)},e.known?k1:0)}))}async function D1(t){Rp.delete(t);let e=Ll(t);if(e?.is_ready){Sp.add(t);try{await e.written(),await P1(t,e)}catch(n){if(!(n instanceof y))throw n}finally{Sp.delete(t),f({})}}}async function P1(t,{known:e,rests_on:n,question:o,is_open:i,keep:s}){let a=n();try{let d=await af(o());i()&&s({of:a,days:d})}catch(d){if(!(d instanceof y))throw d;if(!i())return;s({of:a,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Ap(t),x1)}}var Fp=864e5,_o=t=>Math.round(Date.parse(`${t}T00:00Z`)/Fp),zb=t=>new Date(t*Fp).toISOString().slice(0,10),O1=t=>new Date(t*Fp).getUTCDay()===1,Pp=40,Op=18,M1=7,Mp=class{#n;#t;constructor({calendar:e}){this.#n=_o(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(_o(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(O1);return e.filter((n,o)=>o%Math.ceil(e.length/M1)===0).map(zb)}is_at_end=e=>_o(e)-this.#n>.88*this.#t};function Jb(t){let e=new Mp(t),{calendar:n}=t;return r`<figure class="day-strip">
    <p class="aside">${$t(n[0].day)} to ${$t(n.at(-1).day)}</p>
    ${Dp(t,e,20,L1(e))}
    <p>Hours of your making days</p>
    ${Dp(t,e,Pp+2,I1(t,e))}
    ${t.batches.map(o=>r`<p>${H1(t,o)}</p>
          ${Dp(t,e,Op+6,W1(t,e,o))}`)}
    <figcaption>${U1(t)}</figcaption>
  </figure>`}var Dp=(t,e,n,o)=>r`<svg width="100%" height=${n} aria-hidden="true">
    ${S`${F1} ${C1(t,e)}
      ${e.mondays().map(i=>S`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${B1(t).map(i=>S`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,F1=S`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,B1=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),C1=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>S`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),L1=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>S`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${I_(e)}</text>`);function I1({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,s,a)=>{let d=Pp*a/n;return S`<rect class=${i} x=${e.at(s,.1)} width=${e.wide(.8)} y=${1+Pp-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:s,used_min:a})=>S`${o("free",i,s)} ${o("used",i,a)}`)}function W1(t,e,n){let{poured:o,unmoulded:i,cured:s}=n,a=(p,m,_)=>{let b=_o(_)-_o(m);return S`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide(b)} height=${Op} />`},d=o===i,c=(p,m)=>j1(t,p,n).map(_=>S`<circle class=${p} cx=${e.at(_,.5)} cy=${3+Op/2} r=${m} />`);return S`${a("mould",o,d?zb(_o(o)+1):i)}
    ${_o(i)<_o(s)?a("cure",i,s):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var E1=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),N1=({lyes:t},e)=>t.filter(({batches:n})=>n.some(({of:o,runs:i,batch:s})=>o===e.of&&i.join()===e.runs.join()&&s===e.batch)).map(({made:n})=>n);function j1(t,e,n){let o=t.days.filter(({acts:i})=>i.some(s=>s.act===e&&E1(s,n)));return[...new Set([...o.map(({day:i})=>i),...e==="chill"?N1(t,n):[]])]}function H1({asked:t,batches:e},n){let o=({of:a,runs:d})=>a===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:a})=>a.join()===n.runs.join())?.name??"",s=e.filter(o).length;return`${i}${s>1?`, batch ${n.batch} of ${s}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var q1=(t,e)=>r`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,mr=t=>S`<rect class=${t} x="1" y="1" width="24" height="18" />`;function U1({calendar:t,days:e}){let n=i=>e.some(({acts:s})=>s.some(({act:a})=>a===i));return[[!0,mr("used"),"hours used"],[!0,mr("free"),"hours free"],[!0,mr("mould"),"in the mould"],[!0,mr("cure"),"curing"],[t.some(({off:i})=>i),mr("off"),"day off"],[n("cast"),S`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),S`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,S`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,s])=>q1(i,s))}var ei=t=>["/work",t].join("/");function Il(t=!1){let e=(n,o,i,s=!1)=>h({of:"studio",label:o,at:ei(n),unit:i,optional:!0,takes_part:!0,is_due:s,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var z1=({cautions:t})=>t.filter(({severity:e})=>e!=="danger").map(({severity:e,text:n})=>e==="note"?r`<p>${bt(n)}</p>`:r`<p class="minded"><strong>Caution</strong> ${bt(n)}</p>`),fr=(t,e,n="")=>r`<tr>
    <th scope="row">${t}</th>
    <td><b>${D(e)}</b></td>
    <td>${n}</td>
  </tr>`;function J1(t){let{units:e}=l,{made:n,for:o,lye_of:i,pot:s}=t,a=s.full_pot_g===null?"":`with its pot ${D(Y(e,{g:s.full_pot_g,g_text:s.full_pot_g_text,oz_text:s.full_pot_oz_text}))}`;return r`<h3>One pot of lye solution, made on the evening of ${$t(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${bt(o)};
      ${R(s.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${fr("Water, distilled",Y(e,rt(s,"water_")))}
        ${s.alkalis.map(d=>fr(d.name,Y(e,rt(d,""),"down")))}
        ${fr("Lye solution in the pot",Y(e,rt(s,"lye_")),a)}
        ${s.shares.map(d=>r`${fr(`Out of it for ${d.batter}`,Y(e,rt(d,"lye_"),"down"),`superfat then ${oe(d.superfat_percent)}`)}
            ${d.top_up_g>0?fr(`and plain water to ${d.batter}`,Y(e,rt(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${z1(t)}`}var Kb=({lyes:t})=>t.map(J1),Vb=({lyes:t,notes:e})=>[...new Set([...t.flatMap(({cautions:n})=>n),...e].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var ni,hr="",K1=2**20,Qb=t=>ni?.of===t.file?{...t,since:{name:ni.name,text:ni.text}}:t;function Gb(t){let e=async n=>{let o=n.target;await Q1(t,o.files?.[0]),o.value=""};return r`<div class="earlier-calendar">
    <div class="field">
      <label for="earlier-calendar">The calendar that you exported before (.ics)</label>
      <input
        id="earlier-calendar"
        type="file"
        accept=".ics,text/calendar"
        aria-describedby="earlier-calendar-said"
        @change=${n=>{e(n)}}
      />
      <p id="earlier-calendar-said" class=${hr?"complaint":"hint"}>
        ${hr||"Choose it, if there is one: what it has and the days have no more then goes from your calendar too."}
      </p>
    </div>
    ${ni?.of===t?V1(ni):u}
  </div>`}var V1=({name:t})=>r`<p role="status">
    The calendar file will cancel what only <b>${t}</b> has.
    <button type="button" @click=${()=>G1(t)}>Leave ${t} out</button>
  </p>`;async function Q1(t,e){e&&(hr=e.size>K1?`${e.name} is too large for a calendar of this program.`:"",ni=hr?void 0:{of:t,name:e.name,text:await e.text()},P(hr||`${e.name} is taken into account.`))}function G1(t){ni=void 0,P(`${t} is left out.`),V()}var oi=t=>v(l.printing,t);function Yb(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function Zb(t){if(!l.printing.is_working){oi({is_working:!0,told:"Making it ...",on:l.view});try{await Y1(),oi({told:await t()})}catch(e){oi({told:e instanceof Error?e.message:String(e)})}oi({is_working:!1})}}async function Y1(){await rn(),await Ee();let t=l.view==="order"?l.order?.open:void 0,e=Tn("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var $o=()=>l.printing.on===l.view?l.printing.told:"",ie=(t,e)=>()=>Zb(async()=>{let n=URL.createObjectURL(await en(e));return Yb(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),Z1=t=>()=>Zb(async()=>(Yb(await pf(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),X1=t=>{oi({paper:t}),localStorage.setItem("paper",t)},Wl=()=>dt("Paper",l.printing.paper,[["A4","A4"],["Letter","Letter"]],X1),Zt=(t,e,n="",o=!1)=>r`<button
    type="button"
    class=${n}
    ?disabled=${l.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,_n=({words:t,kind:e,file:n,of:o,is_asleep:i},s="")=>r`${Zt(`${t}, to print`,Z1({kind:e,...o}),s,i)}
  ${l.files?.makes_pdf?Zt(`${t}, PDF`,ie(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,bo=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var $n={run:"/money/currency",studio:"/currency"},El={run:"/money/prices",studio:"/prices"},Ye=()=>cn($n)!==void 0;function Vi(){let[t,e]=[g("run",$n.run),g("studio",$n.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[$n,El]}var Nl=()=>O("studio",$n.studio)||String(cn($n)??"");async function Xb(t,e=""){if(t==="run"||!l.order)return;let{open:n}=l.order,o=Qn(n.now).map(({run:s})=>kn(n.file,s)),i=o.find(s=>jl(s,e))??o[0];(!o.includes(l.run.file)||o.some(s=>jl(s,e)))&&await On(i,"set-up")}var jl=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),tw=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function gr(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(Q(t,n));if(o)return o}}var ew=(t,e)=>{ut("set-up studio"),zt("studio",t),$e("set-up"),tw(()=>Gt(gr("studio",e)))};async function nw(t){await Xb(t),at()||await $a(),ew("days","/days/making/monday")}var tA=["order","run","pour","pipe","studio"];async function Hl(t,{file:e,field:n}){if(t==="order"&&jl(l.order.open.file,e))return Gt(gr("order",n));await Xb(t,e);let o=tA.find(i=>jl(to(i)?.file??"",e));if(o==="pour"||o==="pipe")ne(o);else{if(o==="studio")return ew(n.startsWith("/work")&&Ye()?"money work":"days",n);if(gr("run",n))return Gt(gr("run",n));$e("set-up")}tw(()=>Gt(gr(o??"run",n)))}function ql(t){let{days:e,complaint:n,is_old:o}=Ki(t);return r`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?eA(t,n):u}
    ${e?r`<div class=${o?"old":""}>${nA(t,e)}</div>
            ${mA(t,o)}`:n?u:r`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function eA(t,e){let{field:n,is_fault:o}=e;return o?r`<p class="alarm" role="status">${C(e)}</p>
      <button type="button" @click=${()=>Ap(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!at()?r`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{nw(t)}}>To my making days</button>`:["/work",ei("each_batch")].includes(n)?r`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Hl(t,{...e,field:ei("each_batch")})}}
      >
        To the time of a batch
      </button>`:r`<p class="alarm" role="status">${Wn(n)}${bt(C(e))}</p>
    ${n?r`<button type="button" @click=${()=>{Hl(t,e)}}>Go to the field</button>`:u}`}var nA=(t,e)=>r`${cA(e)} ${oA(t,e)} ${Jb(e)} ${rA(t,e)} ${Kb(e)} ${uA(e)}
  ${dA(e)} ${pA(t,e)}`,Bp=(t,e,n)=>r`<small>${t?e:n}</small>`;function oA(t,e){let{kept:n,promise:o,promise_proved:i,from:s}=e;return n===null?r`<p class="when">
        Begun today, ${$t(s)}, promise it for <b>${$t(o)}</b>.
        ${Bp(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>Gt(document.getElementById(Q(t,"/due")))}>
        Give it a due day
      </button>`:n?iA(e):sA(e)}function iA({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:s,pieces:a,last_making_day:d}]=t;return r`<p class="when">
      Begin on <b>${$t(e)}</b> at the latest to have ${K(a,"piece")} by
      <b>${$t(s)}</b>.
      ${Bp(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?r`<p>The last day to pour any of it is ${$t(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${$t(o)}.
      ${i?u:r`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function sA({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:s,rest_on:a})=>i?r`${i} of ${K(o,"piece")} by ${$t(s)}, the rest on <b>${$t(a)}</b>.`:r`none of the ${K(o,"piece")} by ${$t(s)}, all of them on <b>${$t(a)}</b>.`;return r`${t.filter(({kept:o})=>o===!1).map(o=>r`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Bp(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var rA=(t,{days:e})=>r`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>r`<li>
            <h3>${$t(n.day)} <small>${aA(n)}</small></h3>
            <ul>
              ${n.acts.map(lA)}
            </ul>
          </li>`)}
    </ol>
  </details>`,aA=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${Va(e)} of ${Va(t)}`:"",lA=({text:t,min:e,caution:n})=>r`<li>
    ${bt(t)}${e?r` <small>${Va(e)}</small>`:u}
    ${n?r`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function uA({what_if:t,kept:e}){if(!t.length)return r`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:s,proved:a})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${$t(i)} at the latest`:`ready by ${$t(s)}`,a?"":" (the search ended there)"].join("");return r`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>r`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function dA({extras:t}){return t.length?r`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>r`<li>Batch ${n} of ${e} fills ${K(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function cA(t){let e=Vb(t);return e.length?r`<div class="dangers">
    ${e.map(n=>r`<p class="danger"><strong>${pe}</strong> ${bt(n)}</p>`)}
  </div>`:u}function pA(t,{notes:e,studio:n}){let o=e.filter(({severity:a})=>a!=="danger"),i=({severity:a,text:d})=>a==="note"?r`<p>${bt(d)}</p>`:r`<p class="minded"><strong>Caution</strong> ${bt(d)}</p>`,s=({field:a})=>a?r`<button type="button" @click=${()=>{Hl(t,{file:n,field:a})}}>Say it</button>`:u;return o.length?r`<h3>To mind</h3>
        ${o.map(a=>r`<div class="day-note">${i(a)} ${s(a)}</div>`)}`:u}function mA(t,e){let n=qb(t),o=bo(n.file),i={plan:n,paper:l.printing.paper,"with-days":!0};return r`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Zt("Calendar file (.ics)",ie(`${o} days.ics`,{kind:"calendar",days:Qb(n)}),"",e)}
      ${_n({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${Zt("Table of the days (.csv)",ie(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    ${Gb(n.file)}
    <p role="status">${$o()}</p>
  </section>`}var ii=t=>(e,n,o="")=>r`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>r`<td><b>${n(i)}</b></td>`)}
    </tr>`,_r=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function $r(t,e,n,o){let i=`quote ${e}`,s=l.open.has(i),a=`quote-${e.replaceAll(/\W/g,"-")}`,d=r`<button
    type="button"
    class="line"
    aria-expanded=${s?"true":"false"}
    aria-controls=${s?a:u}
    @click=${()=>Ct("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
  </button>`;return r`${ii(t)(d,n)}
  ${s?r`<tr class="opened">
          <td colspan=${t.length+1} id=${a}>${t.map(o)}</td>
        </tr>`:u}`}var br=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function Ul({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var zl=(t,{items:e},n)=>br(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:a})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${a||i}</td>
          </tr>`)),Jl=(t,e)=>$r(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>r`${fA(e(n),n.cash)} ${hA(n.cash)}`),fA=(t,e)=>r`${br(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:a})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${a?`, ${a}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,hA=t=>br("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function wr(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var ow=t=>`${R(t,1)} %`;function gA(t){return"margin_percent"in t?`margin ${R(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${R(t.markup_percent,2)} %`:"price as set"}var Cp=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function Kl(t,e,{way:n,by:o,ask:i,with_tax:s},a,d=u){let c=i===s,p=ii(t),m=b=>Cp(n,b),_=(b,w)=>a?r`${w} ${po(b)}`:w;return r`<tbody>
    ${_r(r`<span class="way">${n}</span>, ${gA(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Lp),"ask")}
    ${e?p("tax in it",m(({tax:b})=>c?b:"none")):u}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>ow(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>ow(b.markup_percent)))}
  </tbody>`}var Lp=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function Vl(t,e){let n=o=>t.filter(({prices:i})=>i.some(s=>s.way===o&&s.is_below_cost));return wr(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var Ip=t=>t===1?"once":`${t} times`;function iw({times:t,currency:e,has_tax:n},o){let i=ii(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(s=>r`<th scope="col"><b>${Ip(s.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:s})=>s)}
        </tbody>
        <tbody>
          ${_r("It costs",t)} ${t[0].lines.map((s,a)=>_A(t,a))}
          ${i("The whole order",({cost:s})=>s,"sum-of")}
        </tbody>
        <tbody>
          ${Jl(t,s=>`made ${Ip(s.times)}`)}
        </tbody>
        ${wr(t).map((s,a)=>Kl(t,n,s,a===0,wA(t,s.way)))}
      </table>
    </div>`}var Wp=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,_A=(t,e)=>$r(t,Wp(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>r`${$A(n[e])} ${n[e].parts.map(({part:o})=>bA(n[e],o))}`),$A=t=>br(`A piece of ${Wp(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,Ul(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),bA=(t,e)=>zl(`${e} of all of them, ${Wp(t)}`,t,e),wA=(t,e)=>t[0].lines.map(({run:n},o)=>ii(t)(`${n??""}, a piece`,({lines:i})=>Cp(e,Lp)(i[o]))),sw=({times:t})=>Vl(t,e=>`the order loses money, made ${e.map(n=>Ip(n.times)).join(", ")}.`);function rw({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:s})=>s.map(a=>`${i??""}: ${a}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?r`<div class="dangers">
    ${[...new Set(n)].map(o=>r`<p class="danger"><strong>${pe}</strong> ${o}</p>`)}
  </div>`:u}function aw({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:s})=>s).filter(({severity:s})=>s!=="danger");return!n.length&&!e.length?u:r`<ul class="limits">
    ${n.map(s=>r`<li>
          <b
            >Poured together (${s.word}): ${Mt(s.lines.map(a=>o[a].run??""))} from one base,
            "${s.formula}", ${D(q(l.units,s.make_g))} in
            ${K(s.batches.reduce((a,{count:d})=>a+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:s})=>r`<li>${s}</li>`)} ${e.map(s=>r`<li>${s}</li>`)}
  </ul>`}function yA(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===l.printing.way)?.way}function Ql({file:t,question:e,prices:n,is_old:o}){let i=bo(t),s=yA(n),a={quote:n.length>1&&s?{...e,way:s}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return r`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?r`<p class="question">The price that is offered</p>
            ${dt("The price that is offered",s,d,p=>v(l.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?_n({words:"Offer",kind:"offer",file:`${i} offer`,of:a,is_asleep:o||!s}):u}
      ${_n({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${l.files?.studios.length?r`${_n({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Zt("Shopping list, table",ie(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?s?u:r`<p class="hint">An offer has one price: choose which.</p>`:r`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${$o()}</p>
  </section>`}var Ep=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#s()}disconnectedCallback(){this.#o.disconnect(),this.#r()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#r(),this.#a(),this.#s())}#s(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#r(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await vA(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";ye(this.#e?r`<img src=${this.#e} alt=${this.#t} />`:r`<p class="hint">${this.#n?e:u}</p>`,this)}};async function vA(t){try{return[URL.createObjectURL(await en({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof y))throw e;return["",e.message]}}customElements.define("cost-picture",Ep);function lw(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,s]=[n[0],n.at(-1)],a=({sell:d,each:c})=>`${c} ${o} at ${d}`;return r`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${a(i)} to ${a(s)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?Nt:Bl()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${o}</th>
          </tr>
        </thead>
        <tbody>
          ${kA(t).map(({sell:d,each:c})=>r`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function kA({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var uw=({sell:t})=>`${t} to sell`;function dw({numbers:t,currency:e,has_tax:n},o){let i=ii(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${t.map(s=>r`<th scope="col"><b>${s.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",s=>s.make)} ${i("fillings",s=>s.fillings)}
          ${i("batches",s=>s.batches)}
          ${t.some(s=>s.to_stock)?i("beyond those, at no cost",s=>s.to_stock):u}
        </tbody>
        <tbody>
          ${_r("A piece costs",t)} ${xA(t).map(s=>TA(t,s))}
          ${i("Cost of a piece",s=>s.cost_each,"sum-of")} ${i("The whole run",s=>s.cost)}
        </tbody>
        <tbody>
          ${Jl(t,uw)}
        </tbody>
        ${wr(t).map((s,a)=>Kl(t,n,s,a===0))}
      </table>
    </div>`}var xA=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],TA=(t,e)=>$r(t,e,n=>Ul(n,e),n=>zl(`${e} of the whole run, ${uw(n)}`,n,e)),cw=({numbers:t})=>Vl(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function pw(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${Ye()?SA():RA()}
  </section>`}var RA=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Np()}>To the prices paid</button>`;function Np(t,e="lane-studio"){ut("set-up studio"),t&&zt("studio",t),$e("set-up"),requestAnimationFrame(()=>I(B(e)))}function SA(){let{quote:t,complaint:e,is_old:n}=Ml();return r`${t?r`${AA(t)} ${cw(t)}`:u}
    <div class="row">${OA(e)}</div>
    ${jp()?u:Hp(t?.currency,e)} ${e?PA(e):u}
    ${t?CA(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function AA({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${pe}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var DA=["sell","margin","markup","price"],Qi=(t,e)=>t?.file===""&&t.field===e?C(t):void 0;function PA(t){return DA.some(e=>Qi(t,e))?u:r`<p class="alarm" role="status">${Wn(t.field)}${C(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${yp}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${gp}>Go to the field</button>`:u}
    ${fp(t)}`}function Gl({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:a,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${A(o)}
      @input=${c=>a(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${gt(t,s,i)}
  </div>`}function OA(t){let{numbers:e}=l.quote_wish;return Gl({id:"quote-numbers",label:"Numbers of pieces",value:e??String(l.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Qi(t,"sell"),take:n=>ks({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&ks({numbers:void 0})}})}var MA=()=>at()?Np("money asking",`${Q("studio","/asking")}-name`):Np(),jp=()=>Object.keys(g("studio","/asking")??{}).length>0,FA=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],BA={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Hp(t,e){let{by:n,figure:o}=l.quote_wish,{label:i,unit:s}=BA[n??"price"],a=d=>s&&Tt(d)?`${d.trim()} ${s}`:d;return r`${dt("A price, for this moment",n,FA,d=>{ks({by:d,figure:""}),I(B("quote-figure"))})}
    ${n?r`<div class="row">
            ${Gl({id:"quote-figure",label:i,unit:s||t,value:s?o.replace(/ %$/,""):o,complaint:Qi(e,n),take:d=>ks({figure:a(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${MA}>Keep my ways of selling</button>`}function CA(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${t.remarks.map(o=>r`<p class="hint">${o}</p>`)} ${dw(t,e)}
  ${LA(t,e)} ${lw(t,e)}
  ${Ql({file:l.run.file,question:Bl(),prices:t.numbers[0].prices,is_old:e})}`}function LA({numbers:t,steps:e,pack_steps:n,pack_steps_untold:o,gaps:i,currency:s},a){let d=c=>c===null?"":`, ${c} ${s} more`;return r`<div class="worth-making ${a?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:c})=>c.map(({text:p})=>r`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>r`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(c=>r`<li><b>${c.sell}: ${c.begins}${d(c.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length||o.length?r`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>r`<li><b>${c.sell}: ${c.shown_as}${d(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>r`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function mw(){let{order:t}=l;if(!t)return r`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return r`${mn(e)} ${fn(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${U(String(n))}`:u}</p>
    ${Ib()} ${Rn(e.now)?ql("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${Rn(e.now)?WA():IA()}
    </section>
    ${Rn(e.now)?qA():u}`}var IA=()=>r`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function WA(){let{quote:t,complaint:e,is_old:n}=Lb();return r`${t?r`${rw(t)} ${sw(t)}`:u}
    <div class="row">${EA(e)}</div>
    ${jp()?u:Hp(t?.currency,e)} ${e?jA(e):u}
    ${t?r`${HA(t)} ${aw(t)} ${iw(t,n)}
          ${Ql({file:qt().open.file,question:Tp(qt()),prices:t.times[0].prices,is_old:n})}`:e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}var EA=t=>Gl({id:"order-times",label:"How often it is made",value:qt().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:Qi(t,"times"),take:e=>v(qt(),{times:e})}),NA=["times","margin","markup","price"];function jA(t){if(NA.some(n=>Qi(t,n)))return u;let e=De("order");return r`<p class="alarm" role="status">
      ${e?r`${Wn(t.field)}${C(t)}`:t.line}
    </p>
    ${t.is_fault?r`<button type="button" @click=${xp}>Ask again</button>`:e&&dn()?r`<button type="button" @click=${()=>Gt(dn())}>Go to the field</button>`:u}`}function HA({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?r`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function qA(){let{file:t,now:e}=qt().open,n={plan:{file:t,order:e},paper:l.printing.paper};return r`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${Wl()}
    <div class="choice">
      ${_n({words:"Bench sheets",kind:"sheet",file:`${bo(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${$o()}</p>
  </section>`}var UA=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function fw(){let t=[...l.files?.orders??[]].sort(UA),e=l.new_order.trim(),n=()=>{ct(async()=>{await __(e),f({new_order:""})})};return r`${Oe("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Ge(t,zA):r`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${A(l.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":r`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${Me("order")}`}function zA(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":K(e,"piece"),n?`due ${U(n)}`:"",o?`changed ${U(o)}`:""].filter(Boolean);return hn({kind:Fo,one:t,facts:i,open:()=>qs(t.file)})}function gw(){if(l.view==="order"&&l.order)return hw(l.order.open);let t=no();if(t)return hw(t);let e=JA();if(e)return e;let{run:n}=l,o=l.formula_of==="apart"||!(X(n)||n.theirs||n.failed);return l.view==="formula"&&o?KA():n.theirs?zp(n):n.failed?Zl(`Not saved: ${n.failed}`):X(n)?Up:Yl(n.shipped?qp:`Saved in ${n.file}`)}function hw(t){return t.theirs?zp(t):t.failed?Zl(`Not saved: ${t.failed}`):X(t)?Up:Yl(t.shipped?qp:`Saved in ${t.file}`)}var qp="Built-in: your first change is saved as a copy.",Up={words:"Saving ...",is_kept:!1},Yl=t=>({words:t,is_kept:!0}),Zl=t=>({words:t,is_kept:!1,is_failed:!0}),zp=t=>Zl(Wo(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function JA(){let t=l.formulas.apart?"apart":"run",e=Tn(t);if(e)return zp(e);if((t==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&X(o)))return l.complaint?.file===""?Zl(`Not saved: ${l.complaint.problem}`):Up}function KA(){let t=l.formulas[l.formula_of];return Yl(t?t.shipped?qp:`Saved in ${t.file}`:"")}function tu(){let{view:t,mould:e,order:n,past:o,future:i}=l;if(t==="shelf"||t==="trail")return{};if(t==="moulds"&&e)return Xl(e,m_,f_);let s=ae(t)?no():void 0;return s?Xl({past:_w(s,o),future:_w(s,i)},Ps,wd):ae(t)?{undo:Ms()&&Oc,redo:Sd()&&f$}:t==="order"&&n?Xl(n,$_,b_):Xl({past:o,future:i},Ps,wd)}function _w(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var Xl=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var $w={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips",shelf:"Shelf"},VA={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},QA="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",GA="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Jp=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${S`<path d=${t} />`}</svg>`;function yw(){let t=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${hf.map(e=>vw(e,$w[e],r`${$w[e]}`))}
              </nav>
              ${ZA()}`}
    </div>
    ${t?u:XA()}
  </header>`}var YA={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`},eu=["metric","both","us"],bw={metric:"g",both:"both",us:"oz"},ww=t=>()=>{f({units:t}),localStorage.setItem("units",t)};function ZA(){let t=eu[(eu.indexOf(l.units)+1)%eu.length];return r`<div class="tools units" role="group" aria-label="Units">
      ${eu.map(e=>r`<button type="button" aria-pressed=${l.units===e?"true":"false"} @click=${ww(e)}>
            ${YA[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${ww(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${bw[l.units]}<span
        class="unseen"
        >. Change to ${bw[t]}</span
      >
    </button>`}function XA(){let{undo:t,redo:e}=tu();return r`<div class="bar">
    ${l.run.file?tD():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${Jp(QA)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${Jp(GA)}<span>Redo</span></button>
    </div>
    ${l.run.file||l.view==="order"?sD():u}
  </div>`}function tD(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${gf.map(eD)}</div>
  </nav>`}function eD(t){let[e,n]=VA[t],o=nD(t);return vw(t,o?`${e}, ${o.words}`:e,r`${Jp(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function nD(t){if(t==="watch"&&k_())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="record"&&oD())return{sign:"\u2717",words:"refused"};if(t==="set-up"&&iD())return{sign:"\u25CB",words:"missing"}}var oD=()=>l.record.run===l.run.file&&l.record.batches.some(({begun:t})=>Ma(t.id)>0),iD=()=>l.complaint!==void 0&&!l.complaint.is_fault;function vw(t,e,n){let o=l.view===t||l.view==="order"&&t==="orders"||l.view==="trail"&&t==="shelf";return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{$e(t)}}
  >
    ${n}
  </button>`}function sD(){let{words:t,is_kept:e,is_failed:n}=gw();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var kw=()=>r`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${ql("run")}`;function Tw(t){if(!r$(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=Jt(e)?`${K(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${xw(t,"pour","The base, whole run")}
      ${e.pipe?xw(t,"pipe","The topping, whole run"):u} ${rD(t)}
    </div>
  </section>`}function xw(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...x$(i),...ul(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:d})=>nu(`${e}.ingredients.${d}.g`,a.name,ti(l.units,a)))}
    ${nu(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",q(l.units,i.make_g))}
  </div>`}var nu=(t,e,n)=>L({key:`needs.${t}`,label:e,shown:n,of:t});function rD(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,a)=>s.colours.map((d,c)=>({layer:s,one:d,i:a,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>Y(l.units,rt(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:d,j:c})=>nu(`pour.layers.${d}.colours.${c}.g`,`${a.name}, for ${s.name}`,ti(l.units,a)))}
    ${o.map((s,a)=>nu(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function Rw(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${L({key:"piece.fresh",label:c("Fresh"),shown:q(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:L({key:"piece.cured",label:c("Cured"),shown:q(l.units,o),of:"piece.cured_g"})}
      ${s?L({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:q(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:L({key:"piece.label",label:"Net weight for the label",shown:q(l.units,i,0),of:"piece.label_g"})}
      ${a?L({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${L({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Kp(t)}
    </section>
    ${pw()} ${Tw(Ei(t))}`}function Kp(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var aD={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function yr({kind:t,unit:e}){let n=aD[t]??[];return e&&n.includes(e)?[e,...n.filter(o=>o!==e)]:n}var Sw="degrees",lD=()=>localStorage.getItem(Sw)??void 0,Aw=t=>localStorage.setItem(Sw,t);function Vp(t){return t.kind!=="temperature"?yr(t)[0]:l.units!=="both"?l.units==="us"?"\xB0F":"\xB0C":lD()}function Dw(t,e){let n=t.kind==="length"&&e?e.startsWith("-")?"below":"above":void 0,o=n?e.replace(/^[+-]\s*/,""):e,i=Se(o);return yr(t).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function Pw({number:t,unit:e,side:n}){let o=t.trim();if(!o)return"";let i=e&&Tt(o)?`${o} ${e}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function ou({kind:t},{number:e,unit:n,side:o}){return t==="temperature"&&!n&&Tt(e)?"Is that in \xB0C or in \xB0F?":t==="length"&&o===void 0&&/[1-9]/.test(e)&&!/^\s*[+-]/.test(e)?"Above the line or below it?":void 0}var Ze,uD=(t,e)=>`note-${t}-${e.replaceAll(/[^\w]/g,"-")}`;function iu(t,e){let n=an(t.begun.id,e.key),o=uD(t.begun.id,e.key),i=n?.refused!==void 0;return r`<div class="blank ${i?"wants":""}" data-key=${e.key}>
    ${e.kind==="choice"?r`<p class="blank-words" id="${o}-label">${e.words}</p>`:r`<label class="blank-words" for=${o}>${e.words}</label>`}
    <div class="blank-value">${dD(t,e,o,n)}</div>
    <p class="blank-beside">
      ${e.planned?r`<span class="planned">planned <b>${e.planned}</b></span>`:u}
      ${gD(t,e,n)}
    </p>
    ${wD(t,e,o,n)}
  </div>`}function dD(t,e,n,o){if(e.kind==="choice")return hD(t,e,n,o);let i=Ow(t,e,o),s=yr(e).length>0||e.kind==="count",a=c=>Qp(t,e,{...i,number:c.target.value}),d=c=>{Go(c),cD(t,e)};return r`<input
      id=${n}
      type=${e.kind==="date"?"date":"text"}
      inputmode=${e.kind==="count"?"numeric":s?"decimal":u}
      class=${s?"number":""}
      autocomplete="off"
      .value=${A(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||ou(e,i)?`${n}-said`:u}
      @input=${a}
      @blur=${d}
      @keydown=${c=>c.key==="Enter"&&pD(c)}
    />
    ${mD(t,e,i)} ${fD(t,e,i)}`}function Ow({begun:t},e,n){if(Ze?.batch===t.id&&Ze.key===e.key)return Ze.typed;if(n?.lacks)return{number:n.text,unit:e.kind==="temperature"?void 0:Vp(e)};let o=Dw(e,n?n.value:e.noted??"");return{...o,unit:o.unit??Vp(e)}}function Qp(t,e,n,o=!1){Ze={batch:t.begun.id,key:e.key,typed:n},Mw(t,e,n,o),V()}function Mw(t,e,n,o){let i=ou(e,n)!==void 0;qd(t,{key:e.key,text:n.number,value:Pw(n),is_left:o,lacks:i})}function cD(t,e){if(Ze?.batch!==t.begun.id||Ze.key!==e.key)return;let{typed:n}=Ze;Ze=void 0,Mw(t,e,n,!0),V()}function pD({target:t}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(t)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function mD(t,e,n){let o=yr(e);if(e.kind!=="temperature")return o.length?r`<span class="unit">${n.unit??o[0]}</span>`:u;let i=s=>{Aw(s),Qp(t,e,{...n,unit:s},!0)};return Fw(`Degrees: ${e.words}`,o,n.unit,i)}function fD(t,e,n){if(e.kind!=="length")return u;let o=i=>Qp(t,e,{...n,side:i},!0);return Fw(`Side: ${e.words}`,["above","below"],n.side,o)}var Fw=(t,e,n,o)=>r`<div class="choice" role="group" aria-label=${t}>
    ${e.map(i=>r`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function hD(t,e,n,o){let i=o?o.value:e.noted,s=a=>{so(t,e.key,a),P(a?`${e.words}: ${a}`:`${e.words}: taken back`)};return r`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(e.choices??[]).map(a=>r`<button type="button" aria-pressed=${a===i?"true":"false"} @click=${()=>s(a)}>
          ${a}
        </button>`)}
    ${i?r`<button type="button" class="plain" @click=${()=>s("")}>Take back</button>`:u}
  </div>`}function gD({begun:t},e,n){if(n?.refused??n?.lacks)return r`<span class="stands not">✗ not noted</span>`;if(n)return r`<span class="stands waiting">… not kept yet</span>`;let o=Ze?.batch===t.id&&Ze.key===e.key;return e.noted!==void 0&&!(o&&!Ze.typed.number.trim())?r`<span class="stands kept">✓ noted ${bD(e.noted_at)}</span>`:u}var _D=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),$D=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function bD(t){if(!t)return"";let e=new Date(t);return(e.toDateString()===new Date().toDateString()?_D:$D).format(e)}function wD(t,e,n,o){if(o?.refused)return Gp(o,`${n}-said`);let i=ou(e,Ow(t,e,o));return i?r`<p class="complaint" id="${n}-said">${i}</p>`:u}function Gp(t,e){let{words:n,is_asked:o,noted:i,is_lye:s}=t.refused,a=t.value||"nothing",d=i!==void 0;return r`<div class="blank-said" role="alert">
    <p class=${s?"alarm":"complaint"} id=${e} data-lye=${s?"true":u}>
      ${s?r`<strong aria-hidden="true">⚠</strong> `:u}${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.
    </p>
    ${o||d?r`<div class="row">
            ${d?r`<button type="button" @click=${()=>Mg(t)}>Keep ${i||"it blank"}</button>`:u}
            <button type="button" @click=${()=>Og(t)}>
              ${d?`Note ${a} in its place`:`It is so: note ${a}`}
            </button>
          </div>`:u}
  </div>`}var Bw="record weights";function Cw(t){let{rows:e=[]}=t;if(!e.length)return u;let n=l.open.has(Bw),o=e.filter(i=>n||i.noted!==void 0||an(t.begun.id,i.key));return r`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${o.map(i=>r`${yD(i,o)} ${iu(t,vD(i))}`)}
    <p>
      <button type="button" aria-expanded=${n?"true":"false"} @click=${()=>Ct("open",Bw)}>
        ${n?"Fold the weights away":"Another weight than planned"}
      </button>
    </p>
  </section>`}var yD=(t,e)=>e.find(({of:n})=>n===t.of)===t?r`<h3>${t.of}</h3>`:u,vD=t=>({...t,kind:"mass",when:"base_mixed"});var vr=t=>{let{beginning:e}=l.record;e&&Ht({beginning:{...e,...t}})},Lw=t=>Ht({beginning:{batch:t,code:"",answers:{}},told:void 0}),Yp=()=>Ht({beginning:void 0}),Iw=t=>vr({code:t,complaint:void 0});async function Zp(t){let{beginning:e}=l.record;if(!(!e||e.is_asking)){vr({is_asking:!0,complaint:void 0});try{l.run.shipped&&await Kn(l.run),await Ee(),await kD(e,t)}catch(n){if(!(n instanceof y))throw n;vr({complaint:n.complaint}),P(`Not begun: ${n.complaint.problem}`)}finally{vr({is_asking:!1})}}}async function kD({batch:t,code:e,answers:n},o){let i=l.run.file,s=Jo(t)!==void 0,a=await Tg({run:i,batch:t,seen:o,code:e.trim()||void 0,again:s,...n}),[d]=a.record.batches;Ht({run:i,beginning:void 0,told:{batch:d.begun.id,remarks:(a.record.remarks??[]).map(c=>c.text)}}),Aa(a,i),P(`The record is begun: ${d.begun.code}`),Fa(d,Ho(t)),await Sn()}async function Ww(t,e){let{beginning:n}=l.record;if(!n)return;let{answers:o}=n,i=s=>{let a=t[s];return a===void 0?o[s]:[...o[s]??[],a]};vr({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await Zp(e)}var Xp=(t,e)=>Ht({code:{batch:t,text:e}}),su=()=>Ht({code:void 0});async function Ew(){let{code:t,run:e}=l.record;if(!t?.text.trim())return su();try{let n=crypto.randomUUID();Aa(await xa({run:e,batch:t.batch,act:n,code:t.text.trim()}),e),su()}catch(n){if(!(n instanceof y))throw n;Ht({code:{...t,complaint:C(n.complaint)}})}}var kr="batch-code";function ru({begun:t}){let{code:e}=l.record,n=e?.batch===t.id,o=()=>{Xp(t.id,t.code),I(B(kr))};return r`<div class="batch-code">
    <p><span class="aside">On the mould:</span> <b class="code">${t.code}</b></p>
    ${n?r`<div class="row">
            <div class="field ${e.complaint?"wants":""}">
              <label for=${kr}>Another code</label>
              <input
                id=${kr}
                autocomplete="off"
                .value=${A(e.text)}
                aria-describedby=${e.complaint?`${kr}-said`:u}
                @input=${i=>Xp(t.id,i.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{Ew()}}>Use this code</button>
            <button type="button" @click=${su}>Leave it</button>
            ${e.complaint?r`<p class="complaint" id="${kr}-said">${e.complaint}</p>`:u}
          </div>`:r`<button type="button" @click=${o}>Change the code</button>`}
  </div>`}var xr;function xD(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var em=t=>`cured.${t}`;function Nw(t,e){let{id:n}=t.begun,o=xr?.batch===n?xr:{batch:n,day:xD(),pieces:"",weight:""},i=t.cured??[],s=i.find(({on:d})=>d===o.day),a=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return r`<div class="blank cure" data-key=${e.key}>
    <p class="blank-words">
      Weighed while it cures ${e.planned?r`<small>planned, cured: ${e.planned}</small>`:u}
    </p>
    ${RD(n).map(SD)}
    ${i.length?r`<ul class="weighings">
            ${i.map(d=>DD(t,d))}
          </ul>`:r`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${tm("Day","cure-day","date",o.day,d=>({...o,day:d}))}
      ${tm("Pieces","cure-pieces","numeric",o.pieces,d=>({...o,pieces:d}))}
      ${tm(`Weight together, ${e.unit??"g"}`,"cure-weight","decimal",o.weight,d=>({...o,weight:d}))}
      <button type="button" ?disabled=${!a} @click=${()=>TD(t,e,o)}>
        ${s?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${s?r`<p class="hint">Noted of ${U(s.on)} already: ${Pa(s)}.</p>`:u}
  </div>`}var tm=(t,e,n,o,i)=>r`<div class="field short">
    <label for=${e}>${t}</label>
    <input
      id=${e}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?u:n}
      autocomplete="off"
      .value=${A(o)}
      @input=${s=>{xr=i(s.target.value),V()}}
    />
  </div>`;function TD(t,{unit:e="g"},n){let o=Tt(n.weight)?`${n.weight.trim()} ${e}`:n.weight.trim(),i=n.pieces.trim(),s=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;so(t,em(n.day),s),P(`Weighing of ${U(n.day)}: ${s}`),xr=void 0,V(),I(B("cure-pieces"))}var RD=t=>l.record.acts.filter(e=>e.batch===t&&e.key.startsWith("cured.")),SD=t=>{let e=U(t.key.slice(6));return t.refused?r`<p><b>${e}</b> <span class="stands not">✗ not noted</span></p>
        ${Gp(t,`said-${t.id}`)}
        <div class="row"><button type="button" @click=${()=>AD(t)}>Correct it</button></div>`:r`<p><b>${e}</b>: ${t.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function AD({batch:t,key:e,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];xr={batch:t,day:e.slice(6),pieces:o,weight:i},V(),I(B("cure-pieces"))}function DD(t,e){let n=an(t.begun.id,em(e.on));return r`<li>
    <span><b>${U(e.on)}</b>: ${Pa(e)} <span class="stands kept">✓ noted</span></span>
    ${n?u:r`<button
            type="button"
            aria-label="Take back the weighing of ${U(e.on)}"
            @click=${()=>so(t,em(e.on),"")}
          >
            Take back
          </button>`}
  </li>`}function jw(){let{batches:t}=l.record;if(t.length<2)return u;let e=Da();return r`<ul class="makings" aria-label="Batches of this run">
    ${[...t].reverse().map(n=>PD(n,n.begun.id===e?.begun.id))}
  </ul>`}function PD(t,e){let{id:n,code:o}=t.begun,i=Ma(n);return r`<li>
    <button type="button" aria-pressed=${e?"true":"false"} @click=${()=>zo(n)}>
      <b>${o}</b> <span>${nm(t)}</span>
      <small>${Tr(t)}; ${K(t.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function nm({number:t,begun:e}){let{of:n=1}=l.record;return`${n>1||t>1?`batch ${t} of ${Math.max(n,t)}, `:""}${K(e.pieces,"piece")}, begun ${U(e.begun_on)}`}var Tr=({for_sale:t,not_for_sale_because:e=""})=>t?"For sale":`Not for sale: ${bt(e)}`;function Hw(t,e){let{number:n,begun:o}=t,i=l.bench.run===l.record.run?Gn(n):void 0,s=i&&new Date(i.begun_at)<=new Date(o.begun_at)?Ho(n):"";return!s||Oa(t,e.key)||an(o.id,e.key)?u:r`<p class="read-at-weights">
    <button type="button" @click=${()=>so(t,e.key,s)}>
      Note ${s}, as read at the weights
    </button>
  </p>`}function qw(t){Sa();let e=Da();return r`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${l.plan?.run??String(l.run.now.name??"")}</h1>
    ${OD()} ${jw()} ${e?FD(e):MD(t)}
  </section>`}function OD(){let{failed:t,unsent:e,acts:n}=l.record,o=e!==void 0&&n.some(i=>!i.refused);return r`<div role="status">
    ${t!==void 0?r`<p class="alarm"><strong>What is recorded could not be read:</strong> ${t}.</p>`:u}
    ${o?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${e}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
  </div>`}function MD(t){return l.record.version===void 0?r`<p class="hint">${l.record.failed===void 0?"Reading ...":""}</p>`:r`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${t}>To the weights</button></p>`}function FD(t){let{blanks:e}=t;return r`<div class="record-head">
      ${ru(t)}
      <p>${nm(t)}</p>
      <p class="sale ${t.for_sale?"is":""}">
        <span aria-hidden="true">${t.for_sale?"\u2713":"\u2717"}</span> <b>${Tr(t)}</b>
      </p>
      ${BD()?r`<button type="button" @click=${()=>Te(t.begun.code)}>What is in it</button>`:u}
    </div>
    ${(t.as_weighed??[]).map(({severity:n,text:o})=>r`<p class=${n==="danger"?"alarm":"aside"}>
          ${n==="danger"?r`<strong aria-hidden="true">⚠</strong> `:u}${o}
        </p>`)}
    ${e?WD(t,e):r`<p class="hint">Reading ...</p>`}`}var BD=()=>!l.record.run.includes("/"),CD={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},LD="unmoulded_on",om="Cure and test";function ID(t){let e=[];for(let n of t){let o=e.at(-1),s=n.key===LD||o?.title===om?om:CD[n.when],a=n.of??"";o?.title===s&&o.of===a?o.blanks.push(n):e.push({title:s,of:a,blanks:[n]})}return e}function WD(t,e){let n=ID(e);return r`<nav class="parts-of-record" aria-label="Parts of the record">
      ${n.map((o,i)=>r`<button type="button" @click=${()=>ED(i)}>${Uw(o)}</button>`)}
    </nav>
    ${n.map((o,i)=>ND(t,o,i))} ${Cw(t)}`}var Uw=({title:t,of:e})=>e?`${t}: ${e}`:t,im=t=>`record-part-${t}`;function ED(t){let e=document.getElementById(im(t));e?.focus({preventScroll:!0}),e?.scrollIntoView({block:"start"})}var ND=(t,e,n)=>r`<section class="record-part" aria-labelledby=${im(n)}>
    <h2 id=${im(n)} tabindex="-1">${Uw(e)}</h2>
    ${e.title===om?jD(t):u} ${e.blanks.map(o=>HD(t,o))}
  </section>`,jD=({for_sale:t})=>t?u:r`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,HD=(t,e)=>e.kind==="weighing"?Nw(t,e):r`${iu(t,e)} ${Ud(e)?Hw(t,e):u}`;var[Jw,rm]=[440,270],[Rr,sm,au,Gi]=[64,Jw-10,10,rm-52],qD=6,UD=8;function zw(t){let e=t/qD,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var Yi=t=>R(t,1);function Kw(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>Yi(Rr+(sm-Rr)*d/n),s=d=>Yi(Gi-(Gi-au)*d/o),a=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${Jw} ${rm}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${zw(n).map(d=>S`<path class="grid" d="M${i(d)} ${au}V${Gi}" />
            <text x=${i(d)} y=${Gi+20} text-anchor="middle">${Yi(d)}</text>`)}
      ${zw(o).map(d=>S`<path class="grid" d="M${Rr} ${s(d)}H${sm}" />
            <text x=${Rr-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${Yi(d)}</text>`)}
      ${S`<text x=${(Rr+sm)/2} y=${rm-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(au+Gi)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(e)} ${au}V${Gi}" />`}
    </svg>
    ${zD(t)}`}function zD(t){let e=Math.max(1,Math.round(t.length/UD)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${Yi(o)}</th>
              <td>${Yi(i)}</td>
              <td>${R(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var lu=Math.PI/8,JD=500,am=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},JD))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await en(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(xi(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof y))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#a}</p>`;ye(r`${e} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-lu)}>Turn left</button>
        <button type="button" @click=${e(lu)}>Turn right</button>
        <button type="button" @click=${n(lu)}>From above</button>
        <button type="button" @click=${n(-lu)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",am);function Vw(t){let{measured:e}=l;if(!e)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${L({key:"mould.brimful",label:"To the brim",note:`${D(Ft(l.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:Lt(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Kw(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${KD(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function KD(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var VD=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function Qw(t){let{batch:e}=l.printing;return Jt(t)&&e<=t.pieces.batches?e:0}function QD(t){if(!Jt(t))return u;let e=Qw(t),n=i=>oi({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${A(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${VD(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${Qe(t,s)}`))}
      </select>
    </div>
  </div>`}function Gw(t){let{paper:e}=l.printing,n=bo(l.run.file),o={file:l.run.file,run:l.run.now},i=l.measured?.mould,s={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},a=Qw(t),d={plan:o,paper:e,...a?{batch:String(a)}:{}};return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${Wl()} ${QD(t)}
    <div class="choice">
      ${_n({words:"Bench sheet",kind:"sheet",file:`${n}${a?` batch ${a}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?Zt("Label draft",ie(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Zt("Drawing of the pour, true size",ie(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Zt("Drawing of the piece",ie(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Zt("Whole piece, GLB (3D viewer)",ie(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Zt("Whole piece, STL (3D printing)",ie(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?r`${Zt("Filled cavity, GLB (3D viewer)",ie(`${n} cavity.glb`,{kind:"glb",gauge:s}))}
            ${Zt("Cavity, STL (3D printing)",ie(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${$o()||`The drawing has the pour line ${D(Ft(l.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Yw=t=>Gw(t);var Bt={at:"/decorations"},Zi=t=>`${Bt.at}/${t}`,wo=t=>O("run",`${Zi(t)}/name`).trim()||`Decoration ${t+1}`,se=()=>$(l.run.now,"/cut")!==void 0,si=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),Sr=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var be="/batch",Zw=t=>`${t}/moulds_owned`;function lm(){return M({name:"batches",pointers:[be],summary:`Batches${GD()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${E("run",be)}
        <div class="row">${YD()} ${XD()}</div>
        ${T({question:"Cavities at each filling",at:be,asked_at:`${be}/fill`,chosen:g("run",`${be}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Xw("fill",t==="full"?t:void 0)})}`})}function GD(){let[t,e]=[`${be}/pieces`,`${be}/casts`].map(o=>O("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function Xw(t,e){let n=ht("run",be,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function YD(){let t=g("run",`${be}/casts`)!==void 0,e=(n,o)=>h({label:o,at:`${be}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return se()?g("run",`${be}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${ZD}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function ZD(){j("run","Counted in loaves",be,Xw("pieces",void 0))}function XD(){let t=`${be}/whippings`;return!he()&&g("run",t)===void 0?u:h({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var tP={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Fe={at:"/dust"},uu=t=>O("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function ty(){ut("set-up dust"),H(Fe,{name:""},"Dust")}function eP(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function ey(t){let e=`/dust/${t}`,n=eP(e),o=uu(t),i=s=>({...ht("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...tP[s]});return r` ${h({label:"Which powder",at:`${e}/name`})}
  ${T({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${fo("run",e,o)}`}var nP={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function oP(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function ny(t,e){let n=oP(t),o=i=>({...ht("run",t,["on_top","buried"]),...nP[i]});return si(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:si(t)==="bought"?r`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:M({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${T({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?iP(`${t}/on_top`):n==="buried"?rP(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function iP(t){return r`<div class="row">
      ${h({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${oy(t,"It is turned")}`}function oy(t,e){let n=o=>h({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return M({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var sP=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function rP(t,e){let n=`${t}/buried`,o=e===k(Bt).findIndex(a=>a.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${E("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:a=>a,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:sP,puts:a=>lP(t,a)})}
  ${i==="said"?dP(t,e):u}`}var aP=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${S`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,iy={x:"",y:"",height:""};function lP(t,e){let n=ht("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${Sr(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>iy);return{...ht("run",t,["per_piece","per_cast"]),[sy(t)]:i.length,buried:{...n,places:i}}}var sy=t=>se()?"per_cast":Sr(t)??"per_piece";function uP(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>F(s,`${t}/${a}`,void 0),n);return F(i,`${t}/${sy(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function dP(t,e){let n=uP(t),o=k(n);return r`${aP()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,d=c=>h({label:`Place ${s+1}: ${c}`,at:`${a}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${W(n,s)} role="group" aria-label="Place ${s+1} of ${wo(e)}">
        ${E("run",a)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${J(n,s,`place ${s+1} of ${wo(e)}`)}
        </div>
        ${oy(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${Z(n,"Add a place",()=>H(n,iy,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var ay=t=>`${t} made`;function cP(){let t=Zi(k(Bt).length),e=se()?{}:{per_piece:""};ut("set-up decorate");for(let n of[ay(t),`${t} where`])zt("run",n);H(Bt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function ly(){let[t,e]=[k(Bt).length>0,k(Fe).length>0];return r`${Z(Bt,t?"Add another decoration":"Add a decoration",cP)}
  ${Z(Fe,e?"Add another dust":"Add a dust",ty)}`}function uy(t){let e=Zi(t);return r` ${E("run",e)} ${gP(e)}
    <div class="row">
      ${mP(e)} ${h({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${si(e)==="bought"?u:pP(e)}
    </div>
    ${ny(e,t)} ${fo("run",e,wo(t))}`}var pP=t=>r`${h({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function mP(t){let e=Sr(t),n=et("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(se()&&e==="per_piece"))return r``;let o=e==="per_cast"?se()?"In each loaf":"In each cast":se()?"On each bar":"On each piece",i=s=>({...ht("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${se()?T({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?h({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var fP={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},ry={density:"",melt_loss:"",left_in_jug:""};function hP(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(ry),"time_per_tray_fill"]:[]],o=si(t)==="bought"&&e!=="bought"?ry:{};return{...ht("run",t,n),...o,...fP[e]}}function gP(t){let e=si(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return M({name:ay(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${h({label:"What it is called",at:`${t}/name`})}
          ${h({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>hP(t,o)})}
        ${e?_P[e](t):u}
        ${e==="bought"?u:h({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var _P={mould:$P,rod:t=>r`<div class="row">
      ${h({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${h({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>h({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function $P(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${Li("Cast in",`${t}/mould`,l.files?.moulds)}
  ${T({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?h({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Be=()=>l.plan?.piece.cost?.materials.map(t=>t.name)??[],nt=t=>l.fats.find(e=>e.id===t)?.name??t,um=8;function ri({key:t,label:e,offers:n,among:o,taken:i,take:s}){let a=`find-${t}`,d=l.finding?.key===t?l.finding.text:"",c=(d.trim()?bP(d,o):n).filter(w=>!i(w)),p=w=>{f({finding:void 0}),s(w)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(w=>Qt(nt(w))===Qt(m)),b=()=>{if(!m)return;let w=c.find(G=>Qt(nt(G))===Qt(m)||Qt(G)===Qt(m)),x=c.length===1?c[0]:void 0;(w??x??_)&&p(w??x??m)};return r`<div class="picker" role="group" aria-labelledby="${a}-label">
    <p class="question" id="${a}-label">${e}</p>
    <div class="field">
      <label for=${a}>Find it by its name</label>
      <input
        id=${a}
        .value=${d}
        @input=${w=>f({finding:{key:t,text:w.target.value}})}
        @keydown=${w=>{w.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,um).map(w=>r`<button type="button" @click=${()=>p(w)}>${nt(w)}</button>`)}
      ${_?r`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>um?r`<p class="hint">${c.length-um} more: type a part of the name.</p>`:u}
  </div>`}function bP(t,e){let n=e?[]:Be(),o=Qt(t).split(/\s+/).filter(Boolean),i=l.fats.filter(a=>Fn(a,t)!==void 0).map(({id:a})=>a),s=a=>o.every(d=>Qt(nt(a)).includes(d));return[...new Set([...n.filter(a=>s(a)||i.includes(a)),...i])]}var En="/packaging",Xi={at:En,stays:!0},dy={material:"",each_piece:""},wP={studio:void 0,own:[dy],nothing:[]},yP=()=>g("run",En)===void 0?"studio":k(Xi).length?"own":"nothing";function dm(){let t=yP();return M({name:"packaging",pointers:[En],summary:`Packaging${vP(t)}`,body:()=>r`${T({question:"What goes round each piece",at:En,is_told_elsewhere:t==="own",chosen:t,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:e=>wP[e],then:e=>e==="own"?`${En}/0/material`:En})}
      ${t==="own"?kP():u}`})}function vP(t){if(t==="studio")return"";if(t==="nothing")return": none";let e=et("run",En).map(({material:n})=>nt(String(n??""))).filter(Boolean);return e.length?`: ${e.join(", ")}`:""}var kP=()=>r`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(Xi).map((t,e)=>{let n=String(t.material||`packaging ${e+1}`);return r`<div class="row" id=${W(Xi,e)}>
        ${h({label:`Material ${e+1}`,at:`${En}/${e}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${e+1}`,at:`${En}/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${J(Xi,e,n)}
      </div>`})}
    ${Z(Xi,"Another material",()=>H(Xi,dy,"A material"))}`;function cy(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!he()?u:r`<div class="labelled">
      ${hc(t,"Make one pot of lye solution for both",e,{})}${Bn("lye_solution")}
    </div>
    ${ze("lye_solution")}
    ${e?h({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function py(t){let e={at:"/bottles"},n=k(e);return M({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&_t(t)?` Weights are of ${_t(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${W(e,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${J(e,i,a)}
            </div>
            ${E("run",s)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${h({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?xP(t,i,a):u}
          </div>`})}
        ${Z(e,"Use up a bottle",()=>H(e,{name:"",holds:""},"bottle"))}`})}function xP(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>L({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:Y(l.units,rt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Ar="/label",pm=()=>g("run",Ar)!==void 0;function my(){let e=g("studio",ts.studio)!==void 0?{weight_spread:""}:{market:""};ut("set-up label"),j("run","Label added",Ar,e,B("lane-label"))}function fy(){return r`${E("run",Ar)} ${TP()}
    <button type="button" @click=${()=>j("run","Label removed",Ar,void 0)}>Remove the label</button>`}var ts={run:"/label/market",studio:"/label/market"};function mm(){let{of:t,at:e}=Gs(ts);return r`${T({of:t,question:"Where it is sold",at:t==="run"?Ar:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?RP(n):n})}
  ${mo("Where it is sold",[ts])}`}function TP(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${mm()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:SP})}
  ${t==="weighed"?AP():r`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${cn(ts)==="EU"||g("run",cm)!==void 0?hc(cm,"With the e mark",g("run",cm)===!0,!0):u}`}var cm="/label/e_mark";function RP(t){return{...ht("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function SP(t){let e=ht("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function AP(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${h({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${J(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Z(t,"One more piece",()=>H(t,"","piece"))}`}function hy(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${Sc(t)?`${c.count} of `:""}${Qe(t,c)}`),a=`Made in ${e} batches${Sc(t)?": ":" of "}${Mt(s)}; ${ol(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${Jt(t)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${K(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var gy=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function _y(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?yy(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?DP(t,e,n,a):0;return{brim:n,line:o,topping:d,ball:s,proud:a,top:Math.max(n,(t.pipe?n:o)+d+a)}}function DP(t,e,n,o){let i=Ue($(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,d]=Pd(e,e.brim-.01),c=Math.PI/4*(d-a)**2;return 1500*t.pipe.visible_each_ml/c}function fm(t,e){let[n,o]=Pd(t,t.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,b)=>{let w=i+b*(Math.max(a(m),a(_))+(o-n)*.035);return`C${w} ${d(m)} ${w} ${d(_)} ${i+b*a(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+a(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Dr=(t,e)=>t===e?`shaded ${e}`:"plain";function yo(t,e,n=u){return r`${$y(t,e,n)}
  ${t==="decorate"&&hm(e)?r`<p class="hint">${hm(e)}</p>`:u}`}var vo=(t,e)=>r`<div class="small-view">${$y(t,e,u)}</div>`;function $y(t,e,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=_y(e,o),s=o.right-o.left,a=Math.max(6,s*.1),d={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${EP(t,e)}>
      ${PP(t)} ${OP(t,e,o,i)} ${FP(t,e,o,i)} ${BP()}
      ${CP(t,e,o,i)} ${WP(t,e,o,i)}
      ${S`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function by(t,e){let n=l.measured.outline,o=_y(t,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-e)/a,per_mm:1/a,w:i+2*s,h:a}}function PP(t){return S`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${gy(wy())} /></clipPath>
  </defs>`}function wy(){let t=l.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function OP(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],a=(s.length?s.map(d=>MP(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return S`<g clip-path="url(#cavity-${t})">${a.map((d,c)=>S`<path class="whole" d=${d} /><path class="${Dr(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?S`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function MP(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function FP(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return S`<g clip-path="url(#cavity-${t})"><rect class=${Dr(t,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function BP(){return S`<path class="wall" fill-rule="evenodd" d=${gy(wy())} />`}function CP(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,a=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return S`
    ${e.pipe?S`<path class=${Dr(t,"pipe")} d=${fm(n,o)} />${t==="pipe"?S`<path fill="url(#dots-pipe)" d=${fm(n,o)} />`:u}`:u}
    ${t==="dust"?LP(e,n,o):u}
    ${o.ball?S`<circle class=${Dr(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:d,one:c,i:p})=>IP(Dr(t,"decorate"),i,d,c,p))}`}function LP(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return S`<path class="powder" d=${t.pipe?fm(e,n):o} />`}function IP(t,e,n,o,i){let[s,a]=[e+n.middle_mm[0],n.middle_mm[2]],d=Ue($(l.run.now,`/decorations/${i}/rod/diameter`)),c=Ue($(l.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return S`<circle class=${t} cx=${s} cy=${-a} r=${yy(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=d/2*Math.sqrt(1-_*_),w=c*_+2*b,x=-180/Math.PI*Math.atan2(m,p);return S`<rect class=${t} x=${-w/2} y=${-d/2} width=${w} height=${d} rx=${b} ry=${b?d/2:0}
    transform="translate(${s} ${-a}) rotate(${x})" />`}var yy=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function hm(t){let e=(t.decorations??[]).filter((n,o)=>$(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function WP(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return S`${Array.from({length:i-1},(s,a)=>{let d=n.left+(n.right-n.left)*(a+1)/i;return S`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function EP(t,e){let n=D(Ft(l.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${hm(e)}`.trim()}var NP=t=>`set-up ${t}`;function re({name:t,title:e,drawing:n,result:o,about:i,form:s}){let a=NP(t),d=()=>Ae({part:e,fold:a},s);if(Cn())return r`${d()}`;i.some(([m,_])=>Ut(m,_))&&ut(a);let c=l.open.has(a),p=Ci().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${e}"
        @click=${()=>Ct("open",a)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var yt=t=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${t}</p>`;var vy=()=>k(Bt).length>0,ky=()=>k(Fe).length>0;function xy(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function Ty(t){let e=t?k(Bt).flatMap((n,o)=>Ay(t,o)??[]):[];return re({name:"decorate",title:"Decorate",drawing:t&&(()=>vo("decorate",t)),result:e.length?e.map(n=>qP(t,n)):yt(Ry(Bt,wo)),about:[["run",Bt.at]],form:()=>r`${t?r`<div class="side">${yo("decorate",t)}</div>`:u}
        <div class="weights">${t?k(Bt).map((n,o)=>jP(t,o)):u}</div>
        ${Dy(Bt,wo,uy)}`})}var Ry=(t,e)=>`${k(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function jP(t,e){let n=Ay(t,e);return n?UP(t,n,e):u}function Sy(t){let e=t?.dust?.length?k(Fe).map((n,o)=>JP(t,o)):void 0;return re({name:"dust",title:"Dust",drawing:t&&(()=>vo("dust",t)),result:e??yt(Ry(Fe,uu)),about:[["run",Fe.at]],form:()=>r`<div class="side">${t?yo("dust",t):u}</div>
        <div class="weights">${t?k(Fe).map((n,o)=>KP(t,o)):u}</div>
        ${Dy(Fe,uu,ey)}`})}var Ay=(t,e)=>xy(t.decorations,k(Bt),O("run",`/decorations/${e}/name`),e);function Dy(t,e,n){return r`<div class="all-questions">
    ${k(t).map((o,i)=>r`<section class="questions" id=${W(t,i)} aria-labelledby="${W(t,i)}-title">
          <div class="part-head">
            <h3 id="${W(t,i)}-title">${e(i)}</h3>
            ${J(t,i,e(i))}
          </div>
          ${Ae({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function HP(t,e){return r`<h3>${t.name}</h3>
    ${L({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function qP(t,e){if(e.bought)return yt(r`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=D(Y(l.units,rt(e,"make_")));return yt(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${Jt(t.whole)?", for the whole run":""}.`)}function UP(t,e,n){return e.bought?HP(e,n):r`<h3>${e.name} ${Jt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${L({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:Y(l.units,rt(e,"make_")),of:`decorations.${n}.make_g`})}
    ${L({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(e.volume_each_ml,2)} ml`,shown:q(l.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${co(e.casting_s)} of casting.</p>`:u} ${zP(e,n)}`}function zP(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=a=>a===null?"not known":D(Ft(l.units,a)),s=a=>{let d=(o?.embeds??[]).map(a).filter(c=>c!==null);return d.length?D(Ft(l.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?r`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(a=>a.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(a=>a.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(a=>a.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(a=>a.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Vo(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function JP(t,e){let n=Py(t,e);if(!n)return u;let o=_t(t);return yt(r`<b>${D(Y(l.units,rt(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Py=(t,e)=>xy(t.dust,k(Fe),O("run",`/dust/${e}/name`),e);function KP(t,e){let n=Py(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=L({key:`set-up.dust.${e}`,label:n.name,note:_t(t),shown:Y(l.units,rt(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function Oy(t){let e=t?.cut;return re({name:"cut",title:"Cut",drawing:t&&(()=>vo("cut",t)),result:e?VP(t,e):yt("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>r`${e?QP(t,e):u}
        <div class="all-questions">${V$()}</div>`})}var VP=(t,e)=>yt(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${D(q(l.units,t.piece.fresh_g))} on average, fresh.`);function QP(t,e){return r`<div class="side">${yo("cut",t)}</div>
    <div class="weights">
      ${L({key:"cut.bar",label:"A bar on average, fresh",note:GP(e),shown:q(l.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${L({key:"cut.offcuts",label:"Offcuts",shown:q(l.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${YP(e)}
    </div>`}function GP(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function YP(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function My(t){return re({name:"label",title:"Label",drawing:XP,result:yt(ZP(t)),about:[["run","/label"]],form:()=>r`<div class="more">${fy()} ${t?Kp(t):u}</div>`})}function ZP(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${D(q(l.units,e,0))}</b>, sold in the ${t.label.market}.`}var XP=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Nn=t=>h({...t,of:"studio"});function Fy(){let t=(e,n,o)=>M({of:"studio",name:`ready ${e}`,pointers:[e],summary:r`<span>${n}<small>${mt("studio",e).join(", ")}</small></span>`,body:o});return r`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${t("/lye_solutions","Lye solutions",oO)} ${t("/blends","Melted blends of fats",rO)}
    </div>
  </section>`}var tO=["/prices","/packs","/have","/waste"],eO=t=>(e,n)=>tO.reduce((o,i)=>$(o,`${i}/${N(t)}`)===void 0?o:Xs(o,i,t,n),e);function nO(t,e){let n=i=>i===t?e:Array.isArray(i)?i.map(s=>s===t?e:s):i&&typeof i=="object"&&i.name===t?{...i,name:e}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((s,a)=>{let d=$(s,a);return d===void 0?s:F(s,a,n(d))},i)}function By({at:t,name:e,label:n,body:o}){let i=(a,d)=>je([["studio",a],["run",nO(e,d)]]),s=`${t}/${N(e)}`;return r`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${Yo("studio",t,e)}
    </div>
    ${E("studio",s)}
    <div class="row">${Zs({of:"studio",at:t,name:e,label:n,also:eO(e),put:i})}</div>
    ${o}
    <div class="row">
      ${Nn({label:"Made on",at:`${s}/made_on`,date:!0,optional:!0,short:!0})}
      ${Nn({label:"Made by",at:`${s}/from`,optional:!0,short:!0})}
      ${Nn({label:"Note",at:`${s}/note`,optional:!0})}
    </div>
  </div>`}var es="/lye_solutions",oO=()=>r`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${mt("studio",es).map(t=>By({at:es,name:t,label:"What you call it",body:iO(t)}))}
    ${Wi({of:"studio",at:es,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:t=>ot("studio",`${es}/${N(t)}/alkali`)})}`;function iO(t){let e=`${es}/${N(t)}`,n=O("studio",`${e}/alkali`),o=n||"alkali",i=O("studio",`${e}/strength`);return r`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${e}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:s=>s,then:()=>`${e}/strength`})}
    <div class="row">
      ${Nn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${e}/strength`,unit:"%"})}
      ${Nn({label:"Coldest it stands",at:`${e}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${sO(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Nn({label:"as weak as",at:`${e}/strength_range/0`,unit:"%",short:!0})}
      ${Nn({label:"or as strong as",at:`${e}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${E("studio",`${e}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${Yt({of:"studio",at:`${e}/made_from`,name:`what ${t} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>r`<div class="row">
            ${Nn({label:`Purity of the dry ${o}`,at:`${e}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function sO(t,e){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(t)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${e} as water is 50 %.`;let i=s=>String(Math.round(s*100)/100);return`So ${i(o)} g of pure ${e} and ${i(100-o)} g of water in 100 g.`}var Pr="/blends",rO=()=>r`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${mt("studio",Pr).map(t=>By({at:Pr,name:t,label:"What you call it",body:aO(t)}))}
    ${Wi({of:"studio",at:Pr,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:t=>B(`find-blend ${t}`)})}`;function aO(t){let e={of:"studio",at:`${Pr}/${N(t)}/fats`,stays:!0},n=k(e),o=i=>n.some(s=>s.fat===i);return r`${E("studio",e.at)}
  ${n.map((i,s)=>r`<div class="row" id=${W(e,s)}>
        ${Nn({label:nt(String(i.fat)),at:`${e.at}/${s}/share`,unit:"%",short:!0})}
        ${J(e,s,nt(String(i.fat)))} ${E("studio",`${e.at}/${s}/fat`)}
      </div>`)}
  ${n.length?r`<p class="total" role="status">
          ${ji("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${ri({key:`blend ${t}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:lO(),among:"fats",taken:o,take:i=>H(e,{fat:i,share:""},nt(i))})}`}var lO=()=>[...new Set(["pour","pipe"].flatMap(t=>{let e=l.formulas[t]?.now.fats;return Array.isArray(e)?e.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],Cy=t=>k({of:"studio",at:`${Pr}/${N(t)}/fats`}).map(({fat:e})=>String(e)),ns=t=>{let e=g("studio",`${es}/${N(t)}`)??{},[n,o]=[e.alkali,e.strength].map(i=>String(i??""));return{alkali:n,words:[t,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Or=t=>`/${t}/lye_from`,Mr=t=>`/${t}/blend`;function Fr(t){let e=mt("studio","/lye_solutions").length>0||g("run",Or(t))!==void 0,n=mt("studio","/blends").length>0||g("run",Mr(t))!==void 0;if(!e&&!n)return u;let o=[...Ly(t),Iy(t)].filter(Boolean).join(", ");return M({name:`/${t} ready`,pointers:[Or(t),Mr(t)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>r`${e?dO(t):u} ${n?pO(t):u}`})}function Ly(t){let e=g("run",Or(t));return typeof e=="string"?[e]:et("run",Or(t)).map(String)}var uO=t=>et(t,"/alkali").map(e=>String($(e,"/alkali")));function dO(t){let e=Or(t),n=Q("run",e),o=Ly(t),i=uO(t),s=[...new Set([...mt("studio","/lye_solutions"),...o])],a=s.filter(m=>o.includes(m)||i.includes(ns(m).alkali)),d=s.filter(m=>!a.includes(m)),c=Rt("run",e),p=m=>{let{alkali:_}=ns(m),b=o.includes(m),w=o.filter(Wt=>Wt!==m&&(b||ns(Wt).alkali!==_)),x=b?w:[...w,m],G=x.length>1?x:x[0];j("run",`${m}: ${b?"no":"yes"}`,e,G)};return r`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Mt(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${a.map(m=>r`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${ns(m).words}
          </button>`)}
    </div>
    ${gt(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?r`<p class="hint">Of another alkali than this formula's: ${d.map(m=>ns(m).words).join(", ")}.</p>`:u}
  </div>`}var Iy=t=>{let e=g("run",Mr(t));return typeof e=="string"?e:O("run",`${Mr(t)}/name`)};function cO(t,e){let n=et(t,"/fats").map(({fat:s})=>String(s)),o=new Set(n.flatMap(s=>{let a=l.fats.find(({id:d})=>d===s);return a?[a.id,a.name,a.inci,...a.also_called]:[s]})),i=new Set([...o].map(s=>s.toLowerCase()));return Cy(e).every(s=>i.has(s.toLowerCase()))}var gm="\0singly";function pO(t){let e=Mr(t),n=Iy(t),o=[...new Set([...mt("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||cO(t,d)),s=o.filter(d=>!i.includes(d)),a=g("run",`${e}/share`)!==void 0;return r`${T({question:"Blend of fats that is weighed",at:e,chosen:n||gm,answers:[[gm,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===gm?void 0:d,hint:s.length?`With fats that this formula has not: ${s.join(", ")}.`:void 0})}
  ${n?a?r`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${e}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:r`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>j("run","Its share",e,{name:n,share:""},ot("run",`${e}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var xo="/pour/layers",ko={at:xo,in_order:!0},_m=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],cu=()=>k(ko);function mO(){let t=e=>cu().some(n=>e in n);return _m.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function Ey(t){let e=cu(),n=mO();return e.length?r`<h3>
      Layers, lowest first ${t&&_t(t)?r`<small>${_t(t)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:xo,is_told_elsewhere:!0,chosen:n,answers:_m,puts:o=>hO(o,t)})}
    <div class="items">${e.map((o,i)=>gO(o,i,n,t))}</div>
    ${Z(ko,"One more layer on top",()=>H(ko,{name:fO(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Z(ko,"Pour it in layers",()=>H(ko,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function fO(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function Ny(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function hO(t,e){let n=cu(),o=l.is_old?void 0:e,i=(s,a)=>{let d=Ny(o,s,a);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((s,a)=>{let d=du(a),c=t!=="parts"&&n.length>1&&a===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,a)}}})}var du=t=>ht("run",`${xo}/${t}`,[..._m.map(([e])=>e),"rest"]);function gO(t,e,n,o){let i=`${xo}/${e}`,s=String(t.name)||`Layer ${e+1}`,a=Ny(o,t,e);return r`<div class="part" id=${W(ko,e)} role="group" aria-label="Layer ${s}">
    ${a&&o?_O(o,a,e):r`<p class="part-title">${s}</p>`} ${E("run",i)}
    ${bO(t,e,n,s)}
    ${o&&a?a.colours.map((d,c)=>$O(o,d,e,c)):u}
    ${M({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${h({label:"Name of the layer",at:`${i}/name`})} ${kO(i,s)} ${xO(i,e)}
        ${J(ko,e,s)}`})}
  </div>`}function _O(t,e,n){return L({key:`pour.layer.${n}`,label:e.name,note:`${lc(Ft(l.units,e.to_mm-e.from_mm))} thick, ${lc(q(l.units,e.mass_each_g))} each`,shown:e.g_text===void 0?q(l.units,e.g):Y(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function $O(t,e,n,o){return L({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${R(e.teaspoons,1)} tsp`:"",shown:ti(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function bO(t,e,n,o){if(n==="parts")return wO(t,e,o);let i="rest"in t;return r`${i?u:h({label:`${o}, ${n}`,at:`${xo}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?vO(e,n):yO(e,n)}
    >
      Takes the rest
    </button>`}function wO(t,e,n){let o=`${xo}/${e}/parts`,i=s=>()=>{f({typed:void 0}),tt("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function yO(t,e){let n=cu().map((o,i)=>i===t?{...du(i),rest:!0}:o.rest?{...du(i),[e]:""}:o);j("run","takes the rest",xo,n)}function vO(t,e){let n=`${xo}/${t}`;j("run","amount of the layer",n,{...du(t),[e]:""},ot("run",`${n}/${e}`))}function kO(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${k(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${W(n,i)} role="group" aria-label="${a} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${J(n,i,a)}
      </div>
      ${E("run",s)}
      <div class="row">
        ${h({label:"Colour",at:`${s}/name`})}
        ${h({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${fo("run",s,a)}
    </div>`})}
  ${Z(n,"Add a colour",()=>H(n,{name:"",rate:""},"colour"))}`}var Wy=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function xO(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===k(ko).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Yt({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:Wy,puts:s=>s})}
        ${M({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!Wy.some(([s])=>s===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Xe=()=>$(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function $m(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=Xe()==="depth"?n-o:o;f({typed:void 0}),tt("run",`/pour/line/${Xe()}`,`${R(i,2)} mm`)}function jy(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Ue($(l.run.now,`/pour/line/${Xe()}`));return n===void 0?t.pour.below_brim_mm:Xe()==="depth"?e-n:n}function TO(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=a=>e((a.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function RO(t){if(!l.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=jy(t),{share:o,h:i}=by(t,e-n),s=c=>TO(c,p=>$m(t,n+p*i)),a=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),$m(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${D(Ft(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function SO(t){let{pour:e}=t,n=D(Ft(l.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=_t(t);return yt(r`${o}, <b>${D(q(l.units,e.mass_each_g))}</b> ${i}; make
      <b>${D(q(l.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var Hy=()=>Xe()==="depth"?"Depth":"Below brim";function qy(t){return re({name:"pour",title:"Pour",drawing:t&&(()=>vo("pour",t)),result:t?SO(t):yt(`${AO()}.`),about:[["run","/pour"]],form:()=>r`${t?DO(t):PO()}
        <div class="more">
          ${pu("pour")} ${Fr("pour")} ${Ey(t)} ${gl("pour")}
        </div>`})}function AO(){let t=O("run",`/pour/line/${Xe()}`);return t?`${t} ${Xe()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function DO(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>$m(t,jy(t)+i);return r`<div class="side">
      ${yo("pour",t,RO(t))} ${Uy(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:Hy(),at:`/pour/line/${Xe()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${L({key:"pour.each",label:"Weigh into each",shown:q(l.units,e.mass_each_g),note:`${R(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${L({key:"pour.mm",label:"1 mm more or less",shown:Lt(l.units,e.ml_per_mm,2),note:`${un(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${L({key:"set-up.pour.make",label:"Base to make",note:_t(t),shown:q(l.units,e.make_g),of:`${n}.make_g`})}
      ${L({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var PO=()=>r`<div class="side">
    ${Uy()} ${E("run","/pour/line")}
    ${h({label:Hy(),at:`/pour/line/${Xe()}`,unit:"mm"})}
  </div>`,pu=t=>r`<button type="button" @click=${()=>ne(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function Uy(t){let e=n=>{if(n===Xe())return;let o=t&&!l.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;j("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return dt("The pour line is measured",Xe(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var OO=[0,50,80,100];function zy(t){let e=t?.pipe;return re({name:"pipe",title:"Pipe",drawing:e&&(()=>vo("pipe",t)),result:e?MO(t,e):yt("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?FO(t,e):BO()})}function MO(t,e){let n=_t(t);return yt(r`Pipe <b>${R(e.volume_each_ml,0)} ml</b> on each, ${D(q(l.units,e.mass_each_g))} at this
      whipped density; make <b>${D(q(l.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function FO(t,e){return r`<div class="side">
      ${yo("pipe",t)}
      ${L({key:"pipe.each",label:"Topping on each",shown:Lt(l.units,e.volume_each_ml),note:`${R(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${L({key:"set-up.pipe.make",label:"Topping to make",note:_t(t),shown:q(l.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${L({key:"pipe.density",label:"Whipped density",note:`overrun ${R(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${pu("pipe")} ${Fr("pipe")}
    </div>
    <div class="weights">${Gc(e)} ${Qy()} ${CO(t)} ${jO(t)}</div>
    <div class="more">${Qc(e)} ${Vc()}</div>`}var Br=t=>t===0?"pipe":`pipe.whipping${t}`,Cr=(t,e)=>`${t.place}.pipe.whippings.${e}`;function Jy(t,e){let n=nl(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function BO(){return r`<div class="more">${Qc()}</div>
    <div class="side">${Qy()} ${g("run","/pipe/whip_now")===void 0?u:Vy()}</div>
    <div class="weights">${Gc()} ${pu("pipe")} ${Fr("pipe")}</div>
    <div class="more">${Vc()}</div>`}var Ky=t=>_t(t)?r`<small>${_t(t)}</small>`:u;function CO(t){return r`<h3>Today's bowl ${Ky(t)}</h3>
    ${Vy()} ${t.whippings.map((e,n)=>LO(t,e,n))}`}function LO(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${Jy(t,e)}
  ${o==null?u:L({key:`${Br(n)}.now`,label:"Enough for",note:s,shown:[K(o,"piece"),""],size:"weigh",of:`${Cr(t,n)}.pieces_now`})}
  ${WO(t,e,n)}`}function Vy(){let t=g("run","/pipe/whip/holds"),e=t===void 0?sr():{holds:t,net:""};return Yt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:IO})}function IO(){return r`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${rr("/pipe/whip_now")}
  </div>`}function WO(t,e,n){return e.readings?.length?M({name:`${Br(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>EO(t,e,n)}):u}function EO(t,e,n){return r`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${e.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${R(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${R(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Vo(`${Br(n)}.readings`,"Show the calculation",`${Cr(t,n)}.readings`)}`}function Qy(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(O("run",t))?.[1]?.replace(",",".")),n=Ut("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${po("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${OO.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>tt("run",t,`${o} %`)}
          >
            ${NO(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function NO(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${S`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function jO(t){let e=t.whippings.map(i=>({one:i,words:HO(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${Ky(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${Jy(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Vo("pipe.limits","How the limits come about",`${Cr(t,0)}.limits`)}`}function HO({piping_s:t,lye_spoonfuls:e}){return[t?`${co(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${co(e.altogether_s)}`:""].filter(Boolean).join("; ")}function Yy(t){return re({name:"lye",title:"Lye",drawing:UO,result:t?Gy(t).map(qO):yt("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${Gy(t).map(zO)} ${KO(t)}</div>`:u}
        <div class="more">${cy()} ${py(t)}</div>`})}function Gy(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let a=nl(t,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:Cr(t,s),pieces:e,key:Br(s)}});return[n,...o]}function qO({title:t,batter:e,slot:n,pieces:o}){let i=lo(n,o).length?" \u26A0":"";return yt(r`${t}: ${R(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${oe(e.superfat_percent.effective)}${i}</b>.`)}var UO=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function zO({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,d=lo(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${L({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${L({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${oe(a)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${Us(t,c,i)} ${Zy(n.superfat_percent)} ${JO(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:h({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:l.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Zy(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,a=`It lies between ${oe(e)} and ${oe(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${oe(o)} and ${oe(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return ac(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${d} Some fat is left over even at the lowest.${p}</p>`}function JO(t,e,n){return t.heat?r`${Xy(t.heat)} ${Vo(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function Xy(t){let e=i=>D(L_(l.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?co(i.shortest_min*60):"at once"} to ${co(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return r`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function KO(t){let e=t.lye_pot;if(!e)return u;let{units:n}=l,o=(i,s,a,d,c="")=>L({key:`pot.${i}`,label:s,note:c,shown:a,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(e.strength_percent,1)} %${_t(t)&&`; ${_t(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",Y(n,rt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,Y(n,rt(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",Y(n,rt(e,"lye_")),"lye_g",VO(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,Y(n,rt(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${oe(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,Y(n,rt(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${Us(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?Zy(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${D(Y(l.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?Xy(e.heat):u}
  </div>`}function VO(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=rt(t,"lye_"),i=Y(l.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${D(i)} with the pot: make up with water to that after cooling`}var Lr=new Map,QO=()=>Lr.clear(),GO=t=>typeof t?.owned=="number"?t.owned:void 0;function bm(t){let e=ee(t,l.files?.moulds);return Lr.has(e)||(Lr.set(e,void 0),YO(e)),Lr.get(e)}async function YO(t){try{Lr.set(t,GO(vt((await Et(t)).text))),V()}catch(e){if(!(e instanceof y))throw e}}async function tv(t,e){let n=bm(t);n!==void 0&&(tt("studio",e,n),P(`${n} kept in the studio`),await ZO(ee(t,l.files?.moulds)),pt())}async function ZO(t){let e=await Pt(te,t);e.shipped||e.theirs||(Ot(e,F(e.now,"/owned",void 0)),await on(e),QO())}var mu=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],fu=t=>t[0].toUpperCase()+t.slice(1),hu=t=>h({...t,of:"studio"});function ev(){return!Cn()&&l.run.file&&l.open.has("folded studio days")&&Ki("run"),r`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${M({of:"studio",name:"days",pointers:["/days",...Ye()?[]:["/work"]],summary:r`<span>When you work${r`<small>${XO()}</small>`}</span>`,body:tM})}
  </section>`}function XO(){let t=g("studio","/days/making")??{};return mu.filter(e=>t[e]).map(e=>`${fu(e)} ${String(t[e])}`).join(", ")}var tM=()=>r`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${mu.map(t=>hu({label:fu(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${E("studio","/days")} ${E("studio","/days/making")} ${eM()} ${nM()} ${iM()}
    ${Ye()?r`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:r`<p class="question">How long the work takes you</p>
            <div class="row">${Il(g("studio","/days")!==void 0)}</div>
            ${E("studio","/work")}`}`;function eM(){let t="/days/small_jobs",e=Q("studio",t),n=et("studio",t),o=a=>{let d=mu.filter(p=>p===a!==n.includes(p)),c=p=>Ln(F(p,t,d.length?[...d]:void 0),"/days");fe("studio",`${fu(a)}: ${n.includes(a)?"no":"yes"}`,c)},i=Ut("studio",t),s=mu.filter(a=>n.includes(a)||!O("studio",`/days/making/${a}`));return r`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${s.map(a=>r`<button type="button" aria-pressed=${n.includes(a)?"true":"false"} @click=${()=>o(a)}>
            ${fu(a)}
          </button>`)}
    </div>
    ${gt(e,i,"Without any, these wait for a making day.")}
  </div>`}var Ir={of:"studio",at:"/days/off",and:t=>Ln(t,"/days")};function nM(){return r`<p class="question">Days off and holidays</p>
    ${k(Ir).map((t,e)=>oM(String(t),e))}
    ${Z(Ir,"Add a day off",()=>H(Ir,"","A day off"))}`}function oM(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),s=Q("studio",n),a=Rt("studio",n),d=(m,_)=>tt("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,w)=>r`<div class="field short ${a?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${A(b)}
        @input=${x=>w(x.target.value)}
        @blur=${Go}
        aria-invalid=${a?"true":"false"}
        aria-describedby=${a?`${s}-said`:u}
      />
      ${m===s?gt(s,a):u}
    </div>`,p=o?`off on ${U(o)}`:`day off ${e+1}`;return r`<div class="row" id=${W(Ir,e)} role="group" aria-label=${p}>
    ${c(s,"First day off",o,m=>d(m,i))}
    ${c(`${s}-last`,"Last, if there are several",i,m=>d(o,m))} ${J(Ir,e,p)}
  </div>`}function iM(){let t=(e,n,o)=>hu({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return r`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${hu({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${sM()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?r`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var sM=()=>Yt({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let t=(e,n,o,i={})=>hu({label:n,at:`/days/one_lye_a_day/${e}`,unit:o,short:!0,...i});return r`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${t("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${t("saves","Each further batch takes less by","min")}
          ${t("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var rM={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},nv=t=>({run:t,studio:t}),wm=t=>nv(`/losses/${t}`);function ym(t,e){return rM[t].map(({name:n,label:o,unit:i,optional:s})=>It(nv(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var vm={holds:"",paid:""},gu=t=>({of:"studio",at:`/packs/${N(t)}`,in_order:!0,and:(e,n)=>n?e:Ii(Ln(e,"/packs"),[`/serves_as/${N(t)}`])});function iv(t){let e=l.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function sv(t,e){let n=new Set(iv(e).map(o=>o.toLowerCase()));return mt("studio",t).find(o=>n.has(o.toLowerCase()))}var ai=t=>sv("/packs",t),rv=t=>Be().includes(t)||l.fats.some(e=>e.id===t)?"g":void 0,av="money packs";function lv(t){return r`${mt("studio","/packs").map(e=>aM(e,t))}
  ${ri({key:"pack",label:"Which material comes in packs?",offers:Be(),taken:e=>ai(e)!==void 0,take:_u})}`}function aM(t,e){let n=gu(t),o=nt(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,s)=>uM(n,s,o,rv(t),e))}
    <div class="row">
      ${Z(n,r`Another pack of ${o}`,()=>H(n,vm,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${N(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${lM(t)}
    </div>
  </div>`}var ov=t=>`/serves_as/${N(t)}`;function lM(t){let e=ov(t),n=O("studio",e),o=new Set(iv(t)),i=[...new Set([...Be(),...mt("studio","/packs")])].filter(a=>!o.has(a)&&g("studio",ov(a))===void 0),s=a=>d=>Ln(F(d,e,a||void 0),"/serves_as");return!n&&(Be().some(a=>o.has(a))||!i.length)?u:wt({label:"Another make of",of:"studio",at:e,answers:i.map(a=>[a,nt(a)]),unsaid:"nothing: a material of its own",optional:!0,take:a=>fe("studio",`${nt(t)}: ${a?nt(a):"a material of its own"}`,s(a))})}function uM(t,e,n,o,i){let s=`${t.at}/${e}`,a=(c,p,m={})=>h({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Ut("studio",`${s}/holds`);return r`<div class="row" id=${W(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${a("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${a("paid","Paid for it",{told:i})} ${dM(s)}
    ${a("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?a("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${J(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function dM(t){let e=`${t}/from`,n=mt("studio","/sellers");return n.length?wt({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:e,optional:!0,short:!0})}function _u(t){let e=`/packs/${N(t)}`,[n,o]=[`/prices/${N(t)}`,`/money/prices/${N(t)}`],i=Vi().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(pM),a=s.length?[...s,vm]:[vm];je([["studio",c=>cM(F(Ii(c,[n]),e,a))],...i!==void 0?[["run",c=>Ii(c,[o])]]:[]]),P(s.length?`The price of ${nt(t)} is its first pack now`:`${nt(t)} added`),zt("studio",av),I(Je(W(gu(t),a.length-1)))}var cM=t=>$(t,"/currency")?t:F(t,"/currency",Nl());function pM(t){let e=$(t,"/paid");if(!e)return[];let n=$(t,"/confirmed");return[{holds:$(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var uv=t=>r`<button
    type="button"
    aria-label="Another pack size of ${nt(t)}"
    @click=${()=>_u(t)}
  >
    Another pack size
  </button>`;function dv(t){let e=ai(t),n=et("studio",gu(e).at).length,o=()=>{zt("studio",av),I(Je(W(gu(e),0)))};return r`<div class="row">
    <p>${nt(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${nt(t)}" @click=${o}>To its packs</button>
  </div>`}function cv(){let t=e=>`/have/${N(e)}`;return r`${mt("studio","/have").map(e=>{let n=rv(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${h({of:"studio",label:nt(e),at:t(e),unit:n,hint:o,short:!0})}
      ${Yo("studio","/have",e,nt(e))}
    </div>`})}
  ${ri({key:"have",label:"Which material stands on the shelf?",offers:Be(),taken:e=>sv("/have",e)!==void 0,take:e=>j("studio",`${nt(e)} added`,t(e),"",ot("studio",t(e)))})}`}var pv=({key:t})=>`money ${t}`;function hv(){if(!Ye())return u;let t=fM(Nl());return!Cn()&&t.some(e=>l.open.has(`folded studio ${pv(e)}`))&&Ml(),r`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${mM()}
    <div class="folds">
      ${t.map(e=>M({of:"studio",name:pv(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var mM=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${li({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,li=t=>h({...t,of:"studio"}),$u=t=>mt("studio",t).map(nt).join(", ");function fM(t){let e=(i,s,a={})=>li({label:s,at:i,told:t,short:!0,...a}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let a=O("studio",i);return a&&`${a}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:$u("/packs"),body:()=>lv(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:$u("/sellers"),body:()=>gM(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:$u("/have"),body:cv},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(os).map(i=>nt(String($(i,"/material")))).join(", "),body:$M},{key:"work",title:"Work",pointers:["/work"],told:o(ei("paid_an_hour"),` ${t} an hour`),body:()=>wM(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:yM},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${li({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:$u("/asking"),body:()=>vM(e)}]}var hM=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,s])=>s.reduce((a,{from:d},c)=>d===t?F(a,`/packs/${N(i)}/${c}/from`,n):a,o),e);function gM(t){let e=(n,o)=>`/sellers/${N(n)}/${o}`;return r`${mt("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${Yo("studio","/sellers",n)}
        </div>
        <div class="row">
          ${Zs({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:hM(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${li({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Wi({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>ot("studio",e(n,"postage"))})}`}var os={of:"studio",at:"/packaging"},_M=t=>!Be().includes(t)&&!l.fats.some(e=>e.id===t);function $M(){let t=e=>k(os).some(n=>$(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(os).map((e,n)=>bM(String($(e,"/material")??""),n))}
    ${ri({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>mt("studio",e)).filter(_M),taken:t,take:e=>H(os,{material:e,each_piece:""},e)})}`}function bM(t,e){let n=ai(t)!==void 0||g("studio",`/prices/${N(t)}`)!==void 0;return r`<div class="row" id=${W(os,e)}>
    ${li({label:`${nt(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>_u(t)}>
            Say its price
          </button>`}
    ${J(os,e,t)}
  </div>`}function wM(t){let e=g("studio","/work")!==void 0;return r`<div class="row">
      ${t(ei("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${Il()}
    </div>
    ${E("studio","/work")}`}var mv=(t,e)=>T({of:"studio",question:t,at:`/tax/${e}`,chosen:O("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),yM=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Yt({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${li({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${mv("The prices you pay are","prices_paid")} ${mv("The prices you ask are","prices_asked")}`})}`,fv=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function vM(t){let e=n=>`/asking/${N(n)}`;return r`${mt("studio","/asking").map(n=>kM(n,e(n),t))}
  ${Wi({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>ot("studio",e(n))})}
  ${xM(t)}`}function kM(t,e,n){let o=g("studio",e)??{},i=fv.map(([a])=>a).find(a=>o[a]!==void 0),s=a=>li({label:a,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${Yo("studio","/asking",t)}
    </div>
    <div class="row">${Zs({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:fv,puts:a=>({[a]:""}),then:a=>`${e}/${a}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Wr={of:"studio",at:"/price_endings"},xM=t=>r`<p class="question">A price ends in</p>
    ${k(Wr).map((e,n)=>r`<div class="row" id=${W(Wr,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${J(Wr,n,`ending ${n+1}`)}
        </div>`)}
    ${Z(Wr,"Add an ending",()=>H(Wr,"","An ending"))}`;var TM=t=>at()&&ai(t)===void 0&&Vi().length>0;function gv(){if(!Ye())return r`<button type="button" @click=${RM}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${N(e)}/${n}`;return{run:El.run+o,studio:El.studio+o}};return r`<div class="row">
      ${It($n,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Be().map(e=>ai(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${It(t(e,"paid"),{label:`${nt(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${It(t(e,"for"),{label:`for how much ${nt(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${TM(e)&&cn(t(e,"paid"))?uv(e):u}
            </div>`:dv(e))}
    </div>
    ${Be().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function RM(){let t=at()?"studio":"run",e=t==="studio"?$n.studio:$n.run;j(t,"Prices added",e,"",ot(t,e))}var is=t=>({run:t,studio:t}),km=t=>({run:`/pipe/${t}`,studio:`/${t}`}),SM=is("/scales"),_v=is("/spoilage"),AM=is("/pots");function xm(t){return re({name:"studio",title:"My studio",result:yt(DM()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>PM(t)})}function DM(){let t=l.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function PM(t){let e=OM(t),n=[...e.flatMap(o=>o.all),...se()?[_l]:[]];return r`${at()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{$c(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${mo(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${at()?r`${hv()} ${Fy()} ${ev()}`:u}`}function OM(t){let e=he(),n=[{title:"Scales",all:[SM],body:MM},{title:"Losses",all:[wm("pour"),...e?[wm("pipe")]:[]],body:()=>FM(e,t)},{title:"Rejects",all:[_v],body:CM},{title:"Pot and lye jug",all:[AM],body:LM},{title:"Moulds owned",all:$v().map(({shared:o})=>o),body:WM},{title:"Prices paid",all:Vi(),body:gv}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(km),body:IM},{title:"Weigh-cups",all:[],body:q$}),at()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[ts],body:mm}),n}function MM(){let t=(e,n)=>r`${It(is(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${It(is(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function FM(t,e){return r`<div class="row">
      ${ym("pour",t?"Base":void 0)} ${t?ym("pipe","Topping"):u}
    </div>
    ${e?BM(e):u}`}function BM({pour:t,pipe:e,...n}){let o=_t({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:a,lost_g:d})=>`${s}: ${D(q(l.units,a))} in the pieces, ${D(q(l.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var CM=()=>It(_v,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function LM(){let t=(e,n,o)=>It(is(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function IM(){let t=(n,o,i,s=!1)=>It(km(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>cn(km(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function $v(){return["/pour",...k(Bt).map((e,n)=>Zi(n))].flatMap(e=>{let n=O("run",`${e}/mould`);return n?[{mould:n,shared:{run:Zw(e),studio:`/moulds_owned/${N(bc(n))}`}}]:[]})}function WM(){return r`<div class="row">
    ${$v().map(({mould:t,shared:e})=>{let n=l.files?.moulds.find(s=>s.file===t)?.name??t,o=cn(e)===void 0?bm(t):void 0,i=()=>{tv(t,`/moulds_owned/${N(bc(t))}`)};return r`${It(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&at()?r`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Tm(t){let e=t&&Ei(t);return r`${NM(t)}
    <div class="set-up">${bv(e)} ${EM()} ${xm(e)}</div>`}function bv(t){return r`${qy(t)} ${he()?zy(t):u}
  ${vy()?Ty(t):u} ${ky()?Sy(t):u}
  ${se()?Oy(t):u} ${Yy(t)} ${pm()?My(t?.whole):u}`}function EM(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${he()?u:r`<button type="button" @click=${U$}>Add a topping</button>${z$()}`}
      ${ly()} ${K$()}
      ${pm()?u:r`<button type="button" @click=${my}>Draft the label</button>`}
    </div>
  </section>`}function wv(t=u){return r`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${Li("Mould","/pour/mould",l.files?.moulds)}
    ${Li("Base","/pour/formula",l.files?.formulas)}
    ${he()?Li("Topping","/pipe/formula",l.files?.formulas):u} ${t}
  </div>`}function NM(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${wv(t?jM(t):u)}
    <div class="batches">${t?hy(t):u} ${lm()} ${dm()}</div>
  </section>`}function jM(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:a}=t.pieces,d=Jt(t)?`${a} batches, ${K(o,"filling")}`:ol(o,i);return L({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function HM(){let e=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(qM);return[Ae({part:"Run"},()=>[wv(),lm(),dm()]),...e.map(n=>Ae({part:String(l.formulas[n].now.name||"Formula")},()=>Pb(n))),bv(),xm()]}var qM=(t,e,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[t])===e;U_(HM);var UM={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function yv(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${UM[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}var Rm="begin-title";function vv(t){let{record:e}=l;if(e.run!==l.run.file||e.version===void 0)return u;let{number:n,since:o}=t,i=o===void 0?void 0:Jo(n,o);if(i)return zM(i,t);if(e.beginning?.batch===n)return JM(e.beginning,t);let s=()=>{Lw(n),I(B(Rm)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))};return r`<div class="begin-record">
    <button type="button" class=${t.is_due?"strong":""} @click=${s}>Lye is mixed: begin the record</button>
  </div>`}function zM(t,{show:e}){let{told:n}=l.record,o=()=>{zo(t.begun.id),e()};return r`<div class="begin-record is-begun">
    ${ru(t)}
    <button type="button" class="strong" @click=${o}>Note what happens</button>
    ${n?.batch===t.begun.id&&n.remarks.length?r`<ul class="begin-remarks" role="status">
            ${n.remarks.map(i=>r`<li>${i}</li>`)}
          </ul>`:u}
  </div>`}function JM(t,e){let{number:n,words:o,seen:i,is_struck:s}=e,a=Jo(n),{complaint:d,is_asking:c}=t,p=!s&&!c&&!Yn(n);return r`<div class="begin-record asked" role="group" aria-labelledby=${Rm}>
    <p id=${Rm} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${a?KM(a,e):u}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">Code on the mould</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${A(t.code)}
          aria-describedby="code-to-begin-said"
          @input=${m=>Iw(m.target.value)}
        />
        <p class="hint" id="code-to-begin-said">Left blank: the day and the next letter.</p>
      </div>
      <button type="button" class="strong" ?disabled=${!p} @click=${()=>{Zp(i)}}>
        ${c?"Beginning ...":a?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${Yp}>Not yet</button>
    </div>
    ${s?r`<p class="complaint">The weights are not those of what is typed.</p>`:u}
    ${d?VM(d,i):u}
  </div>`}var KM=(t,{show:e})=>r`<p>
      There is a record of it already, <b>${t.begun.code}</b>: ${Tr(t)}. If this is the same soap, go on
      in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{Yp(),zo(t.begun.id),e()}}
      >
        Go on in ${t.begun.code}
      </button>
    </p>`;function VM(t,e){let n=t.choices??[];return r`<div role="alert">
    <p class="alarm">
      ${n.length||t.field==="begin"?`${t.problem}.`:`${C(t)}.`}
    </p>
    ${n.map(o=>r`<button type="button" class="answer" @click=${()=>{Ww(o,e)}}>
          ${QM(o)}
        </button>`)}
  </div>`}function QM(t){let{confirmed:e,lot:n}=t;return t["beyond-stock"]?`There is more than the records say: take it of lot ${t["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${e??""}`}function kv(t,e){let n=t?.batches.findIndex(({numbers:a})=>a.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function ss(t){let e=Gn(t);return e?.finished_at?"done":e||Yn(t)?"under way":"not begun"}var GM=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:t})=>t));function YM(t){let{chosen:e}=l.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>ss(s)===i);return o("under way")??o("not begun")??1}function Sm(){let t=GM(),e=YM(t),n=Gn(e),o=kv(l.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?kv(n.plan,e):o}}var bn=({kept:t})=>!t&&l.is_old,rs=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var ZM=6,XM={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Tv({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${ss(i)}`;return e>ZM?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>xv(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:dt("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${XM[ss(i)]}</span> ${i}<small>
          ${ss(i)}</small
        >`]),i=>xv(Number(i)))}function xv(t){Gh(t),P(`Batch ${t}, ${ss(t)}`)}var bu="";function Rv(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return tF(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!Zn(n,a).is_done).length,s=()=>i?Sv(e.id):void _d(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Dv(e.begun_at)}; its weights stay as they were then.</p>
    ${bu===e.id?Av(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{_d(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${Yn(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function tF({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Dv(n)}.</p>
    ${bu===o?Av("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{As(e)}):r`<button type="button" @click=${()=>Sv(o)}>Start this batch anew</button>`}
  </div>`}function Sv(t){bu=t,V(),I(B("batch-stays"))}function Av(t,e,n){let o=()=>{bu="",V(),I(B("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var eF=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Dv=t=>eF.format(new Date(t));var nF={pour:"Base",pipe:"Topping"},Pv=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Ov(t,e){let[n,o]=[Pv(t),Pv(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${nF[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...d,...c]}var Am=3,Dm=new Map,Pm="";function oF(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=l;if(s&&!Qm(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:C(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Ov(n.vessels,o.vessels),d=new Set(rs(n).map(({text:p})=>p)),c=rs(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return a.length||c.length?{told:a,dangers:c,mark:o.mark}:void 0}function Mv(t){let e=oF(t),{kept:n}=t;if(!e||!n)return u;if(Dm.get(n.id)===e.mark)return rF(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${iF(e)}
    </p>
    ${sF(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${pe}</strong> As it is now: ${i}</p>`)}
    ${Pm===n.id?uF(t):aF(t,e)}
  </div>`}function iF({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Am;return r`${t.slice(0,Am).join("; ")}${n>0?` and ${n} more.`:"."}`}var sF=({told:t})=>t.length>Am?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function rF(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Dm.delete(t),V())}>What has changed</button>
  </div>`}function aF(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Dm.set(o,e),V(),I(B("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>lF(t)}>Start this batch anew</button>`:u}
  </div>`}function lF(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void As(t.number);Pm=o,V(),I(B("keep-weighing"))}function uF(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Pm="",V(),I(B("run-title"))},o=()=>{n(),As(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Fv=({text:t})=>r`<p class="danger"><strong>${pe}</strong> ${t}</p>`;function Bv(t){let e=new Set(l.dangers.run.map(({text:o})=>o)),n=rs(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Fv)}</div>`:u}var dF=({vessel:t})=>["lye","lye_pot","share"].includes(t),cF=({batter:t},e)=>!t||!e.batter||t===e.batter;function Cv(t,e){if(!dF(e))return u;let n=rs(t).filter(o=>cF(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Fv(o)} ${pF(o)}`)}</div>`:u}function pF({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${fF}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>mF(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function mF(t){ne(t),requestAnimationFrame(()=>I(ot(t,"/superfat")))}function fF(){f({view:"watch"}),I(B("watch-title"))}var Om=(t,e)=>r`<p class="do ${bn(t)?"old":""}">${e}</p>`;function Lv(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${D(Ft(l.units,o))} below the brim`;return Om(t,r`${s}, <b>${D(q(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Iv(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Om(t,r`Whip until the level weigh-cup holds <b>${D(q(l.units,n.net_g))}</b>.`):u}function Wv(t,{batch:e}){let{pipe:n}=e;return n?Om(t,r`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${D(q(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}var hF=({vessel:t})=>t==="lye"||t==="lye_pot";function Ev(t,e,n){let o=l.plan?.lye_of_day;if(!hF(n)||!(o??gF()))return u;if(o&&!o.may_be_shared)return r`<p class="day-pot">${o.text}</p>`;let i=t.planned?.mark===e.mark;return r`<div class="day-pot" role="note">
    <p>
      <b>Out of a day's pot, or mixed by itself?</b> Your studio mixes one lye solution for several batches of a day. If
      this one comes out of that pot, <b>weigh no water and no alkali here</b>: one or the other, never both.
    </p>
    ${i?_F(t,n):r`<p>How much is taken out of it stands on the sheet that it was mixed by.</p>`}
    <a href=${we({name:"days",file:l.run.file})}>To Days, where each pot stands</a>
  </div>`}var gF=()=>!l.plan&&$(l.beside.studio?.now,"/days/one_lye_a_day")!==void 0;function _F(t,e){let{days:n,complaint:o,is_old:i}=Ki("run");if(o)return r`<p>The days of this run cannot be told yet: Days says why.</p>`;if(!n||i)return r`<p>Asking for the days of this run ...</p>`;let s=bF(n,t.number,e);return s?r`<p>
      By the days of this run as planned now, out of the pot mixed on the evening of ${$t(s.made)} for
      ${bt(s.for)}:
    </p>
    ${wF(s,t.number,e)}
    <p>If another pot was mixed, as for an order, what stands at that one holds.</p>`:r`<p>
      By the days of this run as planned now, <b>this batch is mixed by itself</b>. In an order, the order's days hold.
    </p>`}var $F=({vessel:t,batter:e})=>t==="lye_pot"?"all":e==="pipe"?"topping":"base",bF=({lyes:t},e,n)=>t.find(o=>o.lye_of===$F(n)&&o.batches.some(({batch:i})=>i===e));function wF({batches:t,pot:e},n,o){let i=t.filter(({batch:a})=>a===n).flatMap(({shares:a})=>a),s=o.rows.filter(({role:a})=>!["water","ice","alkali"].includes(a)).map(({name:a})=>a);return r`<ul>
      ${i.map(a=>{let d=e.shares[a],c=d.top_up_g>0?D(Y(l.units,rt(d,"top_up_"))):"";return r`<li>
          ${d.batter}: <b>${D(Y(l.units,rt(d,"lye_"),"down"))}</b> of the lye
          solution${c?r`, and <b>${c}</b> of plain water`:u}
        </li>`})}
    </ul>
    ${s.length?r`<p>Into the share, as below: ${Mt(s)}.</p>`:u}`}function Nv(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Se(n)===o?n:e,""]}function jv(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return vF(t,e,n);let o=yF(t,e,n);return o===void 0?void 0:{place:o}}function yF({batch:t,plan:e,place:n,vessels:o},i,s){switch(i.vessel){case"fats":case"lye":case"batter":return qv(i,s,t,n);case"layers":return xF(s,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Mm(s.name,t.dust,`${n}.dust`);case"lye_pot":return s.role==="water"||s.role==="ice"?`${n}.lye_pot.water_g`:Mm(s.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let a=o.filter(d=>d.vessel==="melt");return a.length===e.decorations.length?`decorations.${a.indexOf(i)}.make_g`:void 0}case"share":return kF(i,s,t,n)}}function vF({vessels:t},e,n){let o=t.find(s=>s.vessel==="lye"&&s.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:s,shown:a})=>({name:s,value:a,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Hv=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function kF(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,Hv(t)),s=t.batter==="pipe"?i.reduce((a,{count:d})=>a+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${s}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${s}.top_up_g`:qv(t,e,n,o,"lye")}function Mm(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function qv(t,e,n,o,i=t.vessel){let s=Hv(t),[a,d]=t.batter==="pipe"?[n.pipe?.whippings[s],`${o}.pipe.whippings.${s}`]:[n.pour,`${o}.pour`],c=(a?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function xF(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Mm(t.name,e[o].colours,`${n}.${o}.colours`)}function Fm(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>Zn(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Uv(n)}>
    <div class="vessel-head">
      <h3 id=${Uv(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Ev(t,e,n)} ${Cv(e,n)}
    ${rl(n.rows,({key:s})=>s,s=>TF(t,e,n,s))}
  </section>`}var Uv=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function TF(t,e,n,o){let{is_done:i,is_waiting:s}=Zn(t.number,o.key),[a,d]=Nv(l.units,o),c=bn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${A(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>RF(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${a}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${SF(t,e,n,o)}
  </div>`}function RF(t,{mark:e},n,o){if(!bn(t))return Kh(t.number,e,n.key,o.checked);o.checked=!o.checked,P("Not ticked: what is struck through is not to be weighed.")}function SF(t,e,n,o){let{planned:i}=t,s=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,a=i&&s&&jv(i,s,o);if(!a)return u;let d=`weigh.${t.number}.${o.key}`,c=l.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ct("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${p}>${"place"in a?pc(a.place):Qa(a.working)}</div>`:u}`}function Bm(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function zv(t,e){let{planned:n,whip_today:o}=l;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||AF(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Cm=!1;async function AF(t,e){let{planned:n}=l;if(Cm||!n)return;Cm=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await qr({...n,run:F(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...DF(s,t)}})}catch(s){if(!(s instanceof y))throw s;f({whip_today:{...o,complaint:C(s.complaint)}})}finally{Cm=!1}}function DF(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Im,Lm,PF=t=>Im??(Se(t)==="oz"||!t&&l.units==="us"?"oz":"g");function Jv(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=Ho(t.number),i=PF(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${Bn("weigh_cup")}</div>
    ${ze("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${A(Lm??o)}
        ?disabled=${s}
        @input=${a=>Lm=a.target.value}
        @change=${a=>MF(t,e,a.target.value,i)}
      />
      ${dt("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],OF)}
    </div>
    ${FF(t,e,n,o)} ${CF(e,n)}
  </div>`}function OF(t){Im=t,V()}function MF(t,{mark:e},n,o){Lm=void 0;let i=Tt(n)?`${n.trim()} ${o}`:n.trim();if(Im=void 0,i===Ho(t.number))return V();if(bn(t))return P("Not taken: the weights are not those of what is typed."),V();Vh(t.number,e,i),t.kept&&Fa(Jo(t.number,t.kept.begun_at),i)}function FF(t,e,n,o){if(!o)return u;let i=zv(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${BF(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function BF({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${K(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function CF(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>r`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>r`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${D(q(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Er="pour",Kv=()=>Sm().kept!==void 0;function Vv(t){ma(),Sa();let e=Sm(),n=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${Er} aria-labelledby="run-title">
    ${LF(e)} ${WF(e)}
    ${e.weights&&n?r`${Bv(e.weights)} ${Mv(e)} ${EF(e,e.weights,t)}`:u}
    ${e.weights&&n&&!Wm(e)?Gv(e,e.weights,t):u}
    ${Rv(e)}
  </section>`}function LF(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(l.run.now.name??"")}</h1>
    ${e?r`<p class="which">${IF(t,e)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Tv(t)}
    </div>
  </div>`}function IF(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>Zn(t.number,d).is_done).length,a=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${a}${Qe(e,n)}</b>, ${s} of ${i.length} weighed`}function WF({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,d=o!==void 0&&Yn(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Yh}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function EF(t,e,n){let{vessels:o}=e,i=m=>o.filter(_=>_.batter===m),s=i(),a=s.filter(m=>m.day_before),d=s.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>Fm(t,e,_));return r`${zF(c,s)}
    <div class="batters ${c?"two":""}">
      ${wu("ahead","To have ready",p(a))}
      ${wu("base",c?"Base":"Batter",NF(t,e,i("pour"),a,n))}
      ${c?wu("topping","Topping",[...p(i("pipe")),qF(t,e),Bm(i("pipe"),HF(t,e))]):u}
      ${wu("after","At the end",p(d))}
    </div>`}var Qv=({vessel:t})=>t==="lye"||t==="lye_pot";function Wm(t){let n=(t.weights?.vessels??[]).filter(o=>Qv(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>Zn(t.number,o).is_done)}var Gv=(t,{plan:e,batch:n,mark:o},i)=>vv({number:t.number,words:`${t.of>1?`batch ${t.number} of ${t.of}`:"this batch"}, ${Qe(e,n)}`,seen:o,since:t.kept?.begun_at,is_struck:bn(t),is_due:Wm(t),show:i}),wu=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function NF(t,e,n,o,i){let s=({vessel:p})=>p==="layers",a=p=>p.map(m=>Fm(t,e,m)),d=n.filter(p=>!s(p)),c=d.map(Qv).lastIndexOf(!0);return[...a(d.slice(0,c+1)),Wm(t)?Gv(t,e,i):u,...a(d.slice(c+1)),Lv(t,e),...a(n.filter(s)),Bm([...o,...n],jF(t,e))]}var Yv=(t,e,n=u)=>r`<p class=${bn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>oe(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,jF=(t,{batch:e})=>Yv(t,[e.pour],po("superfat_as_weighed")),HF=(t,{batch:e})=>Yv(t,e.pipe?.whippings??[]),qF=(t,e)=>r`${Iv(t,e)} ${Jv(t,e)} ${Wv(t,e)}`,UF={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function zF(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>UF[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Er)||(Er="pour"),r`<div class="narrow">${dt("What is shown",Er,o,JF)}</div>`)}function JF(t){Er=t,V(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Zv=()=>r`${zi(Kv()?"No new weights can be given.":void 0)} ${Vv(()=>{$e("record")})}`;var KF={"set-up":Tm,watch:yv,money:Rw,days:kw,mould:Vw,print:Yw};function Xv(t){let e=r`${la().map(o=>mn(o))} ${aa().map(fn)}`;if(t==="weigh")return r`${e} ${Zv()}`;if(t==="record")return r`${e} ${qw(()=>{$e("weigh")})}`;let{plan:n}=l;return r`${e} ${zi()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?KF[t](n):VF(t)}`}function VF(t){return l.complaint?t==="set-up"?Tm():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var QF=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function ek(){let t=l.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${QF}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=$l(t.sell),s=e.trim()&&n&&o&&i,a=()=>{ct(async()=>{await Na({name:e.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${A(e)}
          @input=${d=>v(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${tk(t,"mould","Mould",GF())} ${tk(t,"formula","Base",YF())}
      ${bl("new-run-sell",t.sell,d=>v(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var GF=()=>[...(l.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...l.catalogue.map(t=>[t.path,t.name])],YF=()=>(l.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function tk(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${a=>v(t,{[e]:a.target.value})}>
      <option value="" .selected=${A(t[e]==="")}>choose ...</option>
      ${o.map(([a,d])=>r`<option value=${a} .selected=${A(a===t[e])}>${d}</option>`)}
    </select>
  </div>`}var ZF=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function ok(){let t=l.files?.runs??[],e=t.filter(o=>!o.shipped).sort(ZF),n=t.filter(o=>o.shipped);return r`${Oe("Runs")} ${ek()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Ge(e,nk):r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Ge(n,nk)}
    </section>
    ${Me("run")}`}function nk(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,a=[e===void 0?"":K(e,"piece"),n??"",o?`due ${U(o)}`:"",i?`made ${U(i)}`:s?`changed ${U(s)}`:""].filter(Boolean);return hn({kind:Mo,one:t,facts:a,picture:XF(n),open:()=>On(t.file)})}var XF=t=>l.files?.moulds.find(e=>e.name===t)?.file??l.catalogue.find(e=>e.name===t)?.path;var ui=({material:t,lot:e})=>`${t}:${e}`,ik=(t,e)=>t.material===e.material&&t.lot.toLowerCase()===e.lot.toLowerCase(),sk=(t,{lots:e})=>e.filter(n=>ik(n,t));function Em(t){return t[0]?.left.pieces!==void 0?{pieces:t.reduce((n,{left:o})=>n+(o.pieces??0),0)}:{g:Number(t.reduce((n,{left:o})=>n+(o.g??0),0).toFixed(6))}}function rk(t,{kind:e,of:n}){if(e==="counted"){let i=t?.materials.flatMap(a=>a.lots)??[],s=i.find(a=>ui(a).toLowerCase()===n.toLowerCase());return s?Em(i.filter(a=>ik(a,s))):{g:0}}return{pieces:t?.pieces.find(({batch:i})=>i===n)?.there??0}}var as=({kind:t,of:e},n)=>`shelf-${`${t}-${e}-${n}`.replaceAll(/[^\w]+/g,"-")}`,jm=({complaint:t},e)=>t&&t.field===e&&!t.asks?C(t):void 0;function Dt(t,{name:e,label:n,kind:o,number:i,count:s,hint:a}){let d=as(t,e),c=jm(t,e),p=c??a;return r`<div class="field ${c?"wants":""}">
    <label for=${d}>${n}</label>
    <input
      id=${d}
      type=${o??"text"}
      inputmode=${s?"numeric":i?"decimal":u}
      autocomplete="off"
      spellcheck="false"
      .value=${A(t.typed[e]??"")}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${p?`${d}-said`:u}
      @input=${m=>qe(t,{typed:{[e]:m.target.value}})}
    />
    ${p?r`<p id="${d}-said" class=${c?"complaint":"hint"}>${p}</p>`:u}
  </div>`}var Vt=({typed:t},e)=>t[e]?.trim()||void 0;function yu(t,e,n,o){let i=(t.typed[e]??"").trim().toLowerCase(),s=i.split(/\s+/),a=o.filter(c=>s.every(p=>c.toLowerCase().includes(p)));return o.some(c=>c.toLowerCase()===i)||!a.length?u:r`<div class="choice" role="group" aria-label=${n}>
      ${a.slice(0,Nm).map(c=>r`<button type="button" @click=${()=>qe(t,{typed:{[e]:c}})}>${c}</button>`)}
    </div>
    ${a.length>Nm?r`<p class="hint">${a.length-Nm} more: type a part of the name.</p>`:u}`}var Nm=8;var ls=({kind:t,of:e})=>`shelf-form-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`;function us(t){let{form:e,title:n,act_words:o,fields:i}=t,s=ls(e),a=()=>{Vd(e),I(tB(e))};return r`<form
    class="shelf-act"
    aria-labelledby=${s}
    @submit=${d=>{d.preventDefault(),uk(t)}}
  >
    <p class="part-title" id=${s} tabindex="-1">${n}</p>
    ${i} ${eB(t)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${e.is_asking}>
        ${e.is_asking?"Recording ...":o}
      </button>
      <button type="button" @click=${a}>Leave it</button>
    </div>
  </form>`}var tB=({kind:t,of:e})=>B(`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`),ak=(t,e)=>`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`,lk="shelf-told";async function uk({form:t,act:e,names:n}){let o=e();if(o&&await Ca(t,o))return I(B(lk));let i=Pn(t)?.complaint;i&&I(B(n.includes(i.field)&&!i.asks?as(t,i.field):`${ls(t)}-said`))}function eB(t){let{form:e,names:n}=t,{complaint:o}=e;if(!o||n.includes(o.field)&&!o.asks)return u;let i=o.choices?.find(({confirmed:a})=>a!==void 0)?.confirmed,s=a=>()=>{a(),uk(t)};return r`<div role="alert">
    <p class="alarm" id="${ls(e)}-said" tabindex="-1">${bt(C(o))}</p>
    ${i===void 0?u:r`<button type="button" class="answer" @click=${s(()=>Ng(e,i))}>It is so</button>`}
    ${o.asks==="seen"?r`<button type="button" class="answer" @click=${s(()=>jg(e,rk(l.stock.list,e)))}>
            Record it even so
          </button>`:u}
  </div>`}function ds(t){let{told:e}=l.stock;return e?.of!==t?u:r`<div class="told" id=${lk} tabindex="-1">
    <div>${e.sentences.map(n=>r`<p>${bt(n)}</p>`)}</div>
  </div>`}var nB={metric:["g","kg"],us:["oz","lb"],both:["g","kg","oz","lb"]},oB={metric:["ml","l"],us:["fl oz"],both:["ml","l","fl oz"]};function Hm(t){let e=[...nB[l.units],...oB[l.units]];return t==="pieces"?["pieces"]:t==="mass"?e:[...e,"pieces"]}var dk=(t,e,n)=>t.typed[`${e}-unit`]??(n==="pieces"?"pieces":void 0);function vu(t,e,n,o){let i=Hm(o),s=ck(t.typed[e])?void 0:dk(t,e,o);return r`<div class="amount-asked">
    ${Dt(t,{name:e,label:n,number:!0})}
    <div class="choice" role="group" aria-label="Unit: ${n}">
      ${i.map(a=>r`<button
            type="button"
            aria-pressed=${a===s?"true":"false"}
            @click=${()=>qe(t,{typed:{[`${e}-unit`]:a}})}
          >
            ${a}
          </button>`)}
    </div>
  </div>`}var ck=(t="")=>t.trim()!==""&&!Tt(t);function ku(t,e,n){let o=(t.typed[e]??"").trim();if(!o)return void Ko(t,e,"How much is it?");if(ck(o))return o;let i=dk(t,e,n);return i?`${o} ${i}`:void Ko(t,e,"In which unit?")}var xu=()=>l.stock.list?.names,fk=(t,e)=>r`${Dt(t,{name:"on",label:e,kind:"date"})}
  ${Dt(t,{name:"best-before",label:"Best before, if it says so",kind:"date"})}`;function hk(t){let e=xu()?.currency;return us({form:t,title:"A lot that came",act_words:"Record it as bought",names:["bought","pack","packs","price","seller","lot","on","best-before"],fields:r`${Dt(t,{name:"bought",label:"Material"})}
      ${yu(t,"bought","Materials",xu()?.materials??[])}
      ${vu(t,"pack","One pack holds","either")}
      <div class="row">
        ${Dt(t,{name:"packs",label:"Packs",count:!0,hint:"left blank: one"})}
        ${Dt(t,{name:"price",label:`Price of one pack${e?`, ${e}`:""}`,number:!0,hint:e?"left blank: unpriced":'with its currency, as "27.50 EUR"; left blank: unpriced'})}
      </div>
      ${Dt(t,{name:"seller",label:"Seller"})} ${yu(t,"seller","Sellers",xu()?.sellers??[])}
      ${Dt(t,{name:"lot",label:"Lot number",hint:"as on the pack; left blank: one of your own"})}
      <div class="row">${fk(t,"Bought on")}</div>`,act:()=>{let n=ku(t,"pack","either");return n?{bought:Vt(t,"bought")??"",pack:n,price:Vt(t,"price"),...gk(t)}:void 0}})}var gk=t=>({packs:Vt(t,"packs"),seller:Vt(t,"seller"),lot:Vt(t,"lot"),on:Vt(t,"on"),"best-before":Vt(t,"best-before")});function _k(t){return us({form:t,title:"A lot that you made of others: lye solution, a blend",act_words:"Record it as made",names:["made","pack","of","lot","on","best-before"],fields:r`${Dt(t,{name:"made",label:"What it is"})}
      ${yu(t,"made","Made ahead",xu()?.made_ahead??[])}
      ${vu(t,"pack","It makes","either")} ${iB(t)}
      ${Dt(t,{name:"lot",label:"Lot number",hint:"left blank: one of your own"})}
      <div class="row">${fk(t,"Made on")}</div>`,act:()=>{let e=ku(t,"pack","either"),n=e?aB(t):void 0;return n?{made:Vt(t,"made")??"",pack:e,of:n,...gk(t)}:void 0}})}var pk=()=>l.stock.list?.materials.flatMap(({lots:t})=>t)??[];function iB(t){let e=(i,s)=>qe(t,{sources:t.sources.map((a,d)=>d===i?{...a,...s}:a)}),n=()=>qe(t,{sources:[...t.sources,{lot:"",amount:"",unit:""}]}),o=jm(t,"of");return r`<div class="made-of" role="group" aria-label="What is in it">
    ${t.sources.map((i,s)=>sB(t,i,s,a=>e(s,a)))}
    <button type="button" @click=${n}>
      ${t.sources.length?"And of another lot":"What of which lot is in it"}
    </button>
    <p class=${o?"complaint":"hint"} id=${as(t,"of")} tabindex="-1">
      ${o??"Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`}function sB(t,e,n,o){let i=as(t,`of-${n}`),s=pk().find(c=>ui(c)===e.lot),a=Hm($k(s)),d=()=>qe(t,{sources:t.sources.filter((c,p)=>p!==n)});return r`<div class="row">
    <div class="field">
      <label for="${i}-lot">Lot</label>
      <select id="${i}-lot" .value=${A(e.lot)} @change=${c=>o({lot:mk(c)})}>
        <option value="" ?selected=${!e.lot}>Choose</option>
        ${pk().map(c=>r`<option value=${ui(c)} ?selected=${ui(c)===e.lot}>
              ${rB(c)}, lot ${c.lot}: ${Re(l.units,c.left)}
            </option>`)}
      </select>
    </div>
    <div class="field">
      <label for="${i}-amount">So much of it</label>
      <input
        id="${i}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${A(e.amount)}
        @input=${c=>o({amount:mk(c)})}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${n+1}">
      ${a.map(c=>r`<button type="button" aria-pressed=${c===e.unit?"true":"false"} @click=${()=>o({unit:c})}>
            ${c}
          </button>`)}
    </div>
    <button type="button" aria-label="Leave out lot ${n+1}" @click=${d}>Leave out</button>
  </div>`}var mk=t=>t.target.value,$k=t=>t===void 0?"either":t.left.pieces===void 0?"mass":"pieces";function rB({material:t,make:e}){let n=l.stock.list?.materials.find(o=>o.material===t);return e??n?.shown_as??t}function aB(t){let e=[];for(let{lot:n,amount:o,unit:i}of t.sources){if(!n)return void Ko(t,"of","Which lot is it?");if(!o.trim())return void Ko(t,"of","How much of it is taken?");if(Tt(o)&&!i)return void Ko(t,"of","In which unit is it?");e.push(`${n}=${Tt(o)?`${o.trim()} ${i}`:o.trim()}`)}return e}function bk(t,e){let n=$k(e[0]);return us({form:t,title:`How much is there of lot ${e[0].lot}?`,act_words:"Record the count",names:["counted","why","on"],fields:r`${e.length>1?r`<p class="hint">${e.length} deliveries have this lot number: count them together.</p>`:u}
    ${vu(t,"counted","There now",n)}
    ${Dt(t,{name:"why",label:"Why, if it is not what was left",hint:"spilt, thrown away"})}
    ${Dt(t,{name:"on",label:"Counted on",kind:"date"})}`,act:()=>{let o=ku(t,"counted",n);return o?{counted:[`${t.of}=${o}`],why:Vt(t,"why"),on:Vt(t,"on")}:void 0}})}function wk(){let{materials:t=[]}=l.stock.list??{};return r`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${Nr("bought","","Bought",!0)} ${Nr("made","","Made of others")}</div>
    ${jr("bought","",hk)} ${jr("made","",_k)} ${lB()}
    ${t.length?r`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${t.map(uB)}`:r`<p class="aside">No lot has anything left.</p>`}
  </section>`}function Nr(t,e,n,o=!1,i,s=""){let a=()=>{Kd({kind:t,of:e,seen:i}),I(B(ls({kind:t,of:e}))),requestAnimationFrame(()=>document.getElementById(ls({kind:t,of:e}))?.scrollIntoView({block:"nearest"}))};return r`<button
    type="button"
    id=${ak(t,e)}
    class=${o?"strong":""}
    aria-expanded=${Pn({kind:t,of:e})?"true":"false"}
    aria-label=${s?`${n}: ${s}`:u}
    @click=${a}
  >
    ${n}
  </button>`}function jr(t,e,n){let o=Pn({kind:t,of:e});return o?n(o):u}function lB(){let t=l.stock.list?.not_counted??[];if(!t.length)return u;let e=()=>{Kd({kind:"take-have",of:""});let o=Pn({kind:"take-have",of:""});o&&Ca(o,{"take-have":!0,on:o.typed.on})},n=Pn({kind:"take-have",of:""})?.complaint?.line;return r`<div class="part">
    <p>The studio's file lists what is no lot yet: ${t.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${e}>Take it over as lots, once</button>
    ${n?r`<p class="alarm" role="alert">${n}</p>`:u}
  </div>`}var uB=t=>r`<section class="material" aria-label=${t.shown_as}>
    <h3>${t.shown_as}</h3>
    <ul class="lots">
      ${t.lots.map(e=>dB(e,t))}
    </ul>
  </section>`;function dB(t,e){let n=ui(t),o=sk(t,e),i=o[0]===t;return r`<li class="lot ${t.is_past?"past":""}" data-lot=${n}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${t.lot}</b>${t.make?r` <span>${t.make}</span>`:u} ${cB(t)}
      </p>
      <p class="lot-facts">${qm(t).map(s=>r`<span>${s}</span> `)}</p>
      ${t.is_past?Um(t):u}
    </div>
    <div class="lot-acts">
      ${i?Nr("counted",n,"Counted",!1,Em(o),`lot ${t.lot}`):u}
      <button type="button" aria-label="Where it went: lot ${t.lot}" @click=${()=>Te(t.lot)}>
        Where it went
      </button>
    </div>
    ${i?ds(n):u}
    ${i?jr("counted",n,s=>bk(s,o)):u}
  </li>`}function cB({left:t,packs:e,pack:n}){let o=(t.g??t.pieces??0)<0,i=t.pieces===void 0?{g:-(t.g??0)}:{pieces:-t.pieces};return o?r`<span class="below"
        >${Re(l.units,i)} more was taken than was recorded: count what is there</span
      >`:r`<b>${Re(l.units,t)}</b>
        <span class="aside">left of ${e===1?"":`${e} \xD7 `}${n}</span>`}function qm({best_before:t,is_past:e,origin:n,on:o,seller:i,paid:s,currency:a}){let d={bought:"bought",made:"made","before records":"there before records began,"}[n];return[t&&!e?`best before ${U(t)}`:"",`${d} ${U(o)}${i?` from ${i}`:""}`,s!==null?`${s} ${a} in all`:n==="bought"?"unpriced":""].filter(Boolean)}var Um=({best_before:t,lot:e})=>r`<p class="past-words">
    Best before ${U(t)}, which is past. Is ${e} still good? No batch takes it unless you choose it.
  </p>`;async function Tu(t,e){if(Hd(t,e),l.run.file===t)return l.record.run===t&&zo(e),f({view:"record"});try{await On(t,"record")}catch(n){if(!(n instanceof y))throw n;P(n.message),f({stock:{...l.stock,told:{of:"",sentences:[n.message]}}})}}function vk(){let{pieces:t=[]}=l.stock.list??{};return r`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${t.length?r`<ul class="lots">
            ${t.map(pB)}
          </ul>`:r`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`}
  </section>`}var yk=[["sold","Sold"],["given","Given away"],["spoilt","Spoilt"],["counted-pieces","Counted"]];function pB(t){let{batch:e,run:n,made:o,there:i}=t;return r`<li class="lot pieces-of" data-batch=${e}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${e}</b> <span>${n}</span> ${o===null?u:r`<b>${i} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${o===null?"How many were made is not noted yet":zm(t)}</span> ${mB(t)}
      </p>
    </div>
    <div class="lot-acts">
      ${o===null?u:yk.map(([s,a])=>Nr(s,e,a,!1,{pieces:i},`pieces of ${e}`))}
      <button type="button" aria-label="Its record: ${e}" @click=${()=>Tu(t.file,t.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${e}" @click=${()=>Te(e)}>
        What is in it
      </button>
    </div>
    ${ds(e)} ${yk.map(([s])=>jr(s,e,a=>hB(a,t)))}
  </li>`}function zm({made:t,rejected:e,sold:n,given:o,spoilt:i,counted:s=0}){let a=[[e,"rejected"],[n,"sold"],[o,"given away"],[i,"spoilt"],[Math.max(s,0),"more by count"],[Math.max(-s,0),"fewer by count"]];return[`${t??0} made`,...a.filter(([d])=>d).map(([d,c])=>`${d} ${c}`)].join(", ")}function mB({cures_until:t,for_sale:e,why_not:n,made:o}){let i=t?`cures until ${U(t)} by its formulas`:"";return e?r`<span>${i?`\u25D4 noted as ready, and ${i}`:"\u2713 for sale"}</span>`:o===null||!n?i?r`<span>◔ ${i}</span>`:u:r`${i?r`<span>◔ ${i}</span> `:u}<span
      >✗ not for sale: ${bt(n)}</span
    >`}var fB={sold:["Sold","Record them as sold","Sold on"],given:["Given away","Record them as given away","Given on"],spoilt:["Spoilt","Record them as spoilt","Found on"],"counted-pieces":["Counted","Record the count","Counted on"]};function hB(t,{batch:e,there:n=0}){let{kind:o}=t,[i,s,a]=fB[o],d=o==="sold"||o==="given";return us({form:t,title:`${i}, of ${e}: ${n} there`,act_words:s,names:[o,"for","order","why","on"],fields:r`${Dt(t,{name:o,label:o==="counted-pieces"?"Pieces there":"Pieces",count:!0})}
    ${d?gB(t):Dt(t,{name:"why",label:"Why"})}
    ${Dt(t,{name:"on",label:a,kind:"date"})}`,act:()=>({[o]:[`${e}=${Vt(t,o)??""}`],on:Vt(t,"on"),why:Vt(t,"why"),order:t.typed.order||void 0,for:t.typed.order?void 0:Vt(t,"for")})})}function gB(t){let e=l.files?.orders.filter(({shipped:i})=>!i)??[],{order:n}=t.typed,o=i=>qe(t,{typed:{order:i===n?"":i}});return r`${e.length?r`<p class="question" id="for-order-${t.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${t.kind}">
            ${e.map(({file:i,name:s,pieces:a,due:d})=>r`<button
                  type="button"
                  aria-pressed=${i===n?"true":"false"}
                  @click=${()=>o(i)}
                >
                  ${s||i}
                  <small
                    >${[a===void 0?"":K(a,"piece"),d?`due ${U(d)}`:""].filter(Boolean).join(", ")}</small
                  >
                </button>`)}
          </div>`:u}
  ${n?u:Dt(t,{name:"for",label:e.length?"Or for whom":"For whom",hint:"may be left blank"})}`}function kk(){let{list:t,failed:e}=l.stock;return r`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${e!==void 0?r`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${e}.</p>`:u}
      ${t?r`${_B()} ${$B()} ${bB()} ${wk()} ${vk()}`:r`<p class="hint">${e===void 0?"Reading ...":""}</p>`}
    </div>`}function _B(){let{list:t,told:e}=l.stock;return!e||!t?u:t.pieces.some(({batch:o})=>o===e.of)||t.materials.some(({lots:o})=>o.some(i=>`${i.material}:${i.lot}`===e.of))?u:ds(e.of)}function $B(){let t=l.finding?.key==="trail"?l.finding.text:"";return r`<form class="row find-trail" @submit=${n=>{n.preventDefault(),t.trim()&&(f({finding:void 0}),Te(t.trim()))}}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${A(t)}
        @input=${n=>f({finding:{key:"trail",text:n.target.value}})}
      />
    </div>
    <button type="submit" ?disabled=${!t.trim()}>Follow it</button>
  </form>`}function bB(){let{has_records:t,notes:e=[]}=l.stock.list??{},n=e.filter(({severity:o})=>o==="danger");return r`${t?u:r`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${n.map(({text:o})=>r`<p class="alarm">${bt(o)}</p>`)}`}function Tk(){let{trail:t}=l.stock,{trail:e,complaint:n,of:o=""}=t??{};return r`<h1 tabindex="-1">${e?wB(e):o}</h1>
    <div class="trail">
      <div class="row">
        <button type="button" @click=${()=>f({view:"shelf"})}>Back to the shelf</button>
        ${e?r`<button type="button" @click=${()=>window.print()}>Print</button>`:u}
      </div>
      ${n?r`<p class="alarm" role="alert">${n}</p>`:u}
      ${e?yB(e):n?u:r`<p class="hint">Reading ...</p>`}
    </div>`}function wB({asked:t,is:e,batches:n}){return e==="lot"?`Where lot ${t} went`:e==="batch"?`What is in ${t}`:`What ${n.flatMap(({went:i})=>i).find(i=>i.for)?.for??t} got`}function yB(t){let{is:e,lots:n,batches:o,gaps:i}=t,s=r`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${e==="lot"?"The lot":"Lots in it"}</h2>
    ${n.length?r`<ul class="lots">
            ${n.map(vB)}
          </ul>`:r`<p class="aside">No lot of it is known.</p>`}
  </section>`,a=r`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${e==="lot"?"Batches that hold it":e==="batch"?"The batch":"Batches"}</h2>
    ${o.length?r`<ul class="lots">
            ${o.map(d=>xB(d,t))}
          </ul>`:r`<p class="aside">No batch has taken of it.</p>`}
  </section>`;return r`${e==="lot"?r`${s} ${a}`:r`${a} ${s}`} ${AB(i)}`}var cs=(t,e)=>r`<button type="button" class="to-trail" @click=${()=>Te(t)}>${e}</button>`;function vB(t){let{shown_as:e}=t;return r`<li class="lot" data-lot=${t.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${cs(t.lot,t.lot)} <span>${t.make??e}</span> <b>${Re(l.units,t.left)}</b>
        <span class="aside">left of ${t.packs===1?"":`${t.packs} \xD7 `}${t.pack}</span>
      </p>
      <p class="lot-facts">${qm(t).map(n=>r`<span>${n}</span> `)}</p>
      ${t.is_past?Um(t):u} ${xk("Made of",t.from_lots)} ${xk("Went into",t.into_lots)}
      ${t.counts.map(({on:n,by:o,why:i})=>r`<p class="lot-facts">Counted ${U(n)}: ${kB(o)}${i?` (${i})`:""}</p>`)}
    </div>
  </li>`}function kB({g:t,pieces:e}){let n=t??e??0;return n?`${Re(l.units,e===void 0?{g:Math.abs(n)}:{pieces:Math.abs(n)})} ${n<0?"less":"more"} than was recorded`:"as it was"}var xk=(t,e)=>e.length?r`<p class="trail-line">
        ${t}
        ${e.map(n=>r`${cs(n.lot,n.lot)} <span>${n.material}, ${Re(l.units,n.amount)}</span> `)}
      </p>`:u;function xB(t,{is:e,asked:n}){let{batch:o,run:i,begun_on:s,rows:a,pieces:d,went:c,cost:p}=t;return r`<li class="lot pieces-of" data-batch=${o}>
    <div class="lot-told">
      <p class="lot-left">
        ${e==="batch"&&o===n?r`<b class="code">${o}</b>`:cs(o,o)} <span>${i}</span>
        ${d.made===null?u:r`<b>${d.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${U(s)}</span>
        <span>${d.made===null?"how many were made is not noted":zm(d)}</span>
        ${p?r`<span>${TB(p)}</span>`:u}
      </p>
      ${c.length?r`<ul class="trail-went">
              ${c.map(RB)}
            </ul>`:u}
      <ul class="trail-rows">
        ${a.map(SB)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${o}" @click=${()=>{Tu(t.file,t.id)}}>
        Its record
      </button>
    </div>
  </li>`}function TB({materials:t,unpriced:e}){let n=t.map(({amount:i,currency:s})=>`${i} ${s}`).join(" and "),o=e.length?`unpriced: ${e.join(", ")}`:"";return[n?`its materials cost ${n}`:"",o].filter(Boolean).join("; ")}function RB({what:t,pieces:e,on:n,order:o,for:i,why:s}){let a={sold:"sold",given:"given away",spoilt:"spoilt",counted:""}[t],d=Math.abs(e),c=t==="counted"?`${d} ${e<0?"fewer":"more"} by count`:`${d} ${a}`,p=o??i;return r`<li>
    ${c} ${p?r`to ${cs(p,i??p)}`:u} on ${U(n)}${s?` (${s})`:""}
  </li>`}function SB({shown_as:t,weighed:e,from:n,unknown:o}){let i=(o.g??o.pieces??0)>0;return r`<li>
    <span>${t}, ${Re(l.units,e)}</span>
    ${n.map(s=>r`<span class="trail-from"
          >${cs(s.lot,s.lot)} ${n.length>1||i?Re(l.units,s.amount):u}
          ${s.make??u}</span
        > `)}
    ${i?r`<span class="trail-unknown"
            >${n.length?`${Re(l.units,o)} of`:"of"} a lot that nobody noted</span
          >`:u}
  </li>`}function AB(t){return t.length?r`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${t.map(({batch:e,run:n,shown_as:o})=>r`<li>${cs(e,e)} ${n}: ${o}</li>`)}
    </ul>
  </section>`:u}function Rk(){let t=no();return r`${Oe("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${al(Un,"Each file is named by the studio, or by the runs that use its tips.",e=>Os(Un,e))}
      ${t?u$(t):u}
      ${ll({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(p$(e)):wa(Un,Pc(e)),tried:ct})}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${Ns().map(({name:e,opening:n,area_mm2:o})=>r`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${Me("tips")}`}var Dk=document.getElementById("page");function Pk(){let{view:t,fault:e}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${yw()} ${x_()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${l.is_old&&!ae(t)&&t!=="order"&&t!=="trail"?"old-now":""}
    >
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${PB()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var DB={runs:ok,orders:fw,formulas:Mb,moulds:Fb,fats:y$,tips:Rk,shelf:kk};function PB(){let{view:t,fault:e}=l;return wn(t)?Xv(t):ae(t)?DB[t]():t==="formula"?Db():t==="order"?mw():t==="trail"?Tk():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}qf(()=>{$b(),ye(Pk(),Dk),FB()});ye(Pk(),Dk);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ae(l.view)&&!l.mould)return;t.preventDefault();let{undo:e,redo:n}=tu();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return t_();Ee()});function OB(){if(!l.run.file)return Jm();f({fault:void 0}),Ee(),pt()}function Jm(){f({fault:void 0}),Rb().catch(t=>{f({fault:MB(t)}),t instanceof y&&t.may_pass&&window.setTimeout(Jm,2e3)})}function MB(t){return t instanceof y&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var Sk=new ResizeObserver(([{target:t}])=>Ok(t.offsetHeight)),Ak=null;function FB(){let t=document.querySelector(".foremost");t!==Ak&&(Sk.disconnect(),t?Sk.observe(t):Ok(0),Ak=t)}var Ok=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);zf();y_();Tb();Vm(t=>{Ui(),t&&OB()});Jm();
