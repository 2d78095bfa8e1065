import{A as wf,B as yf,C as on,D as vf,E as kf,F as xf,G as st,H as bt,I as Tf,J as Rf,K as ue,L as Tn,M as fs,N as sn,O as Fu,P as Sf,Q as Af,S as Df,T as Pf,U as Of,a as of,b as sf,c as L,d as w,e as rf,f as xn,g as ve,h as qr,i as Nt,j as pi,k as af,l as lf,m as uf,n as df,o as cf,p as ms,q as pf,r as mf,s as Ur,t as ff,u as hf,v as gf,w as _f,x as $f,y as nn,z as bf}from"./chunk-F6MCQ53X.js";var zr=globalThis,Jr=zr.ShadowRoot&&(zr.ShadyCSS===void 0||zr.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,Mf=Symbol(),Ff=new WeakMap,Kr=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==Mf)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Jr&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=Ff.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&Ff.set(n,e))}return e}toString(){return this.cssText}},Lf=t=>new Kr(typeof t=="string"?t:t+"",void 0,Mf);var Bf=(t,e)=>{if(Jr)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=zr.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},Mu=Jr?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return Lf(n)})(t):t;var{is:ex,defineProperty:nx,getOwnPropertyDescriptor:ox,getOwnPropertyNames:ix,getOwnPropertySymbols:sx,getPrototypeOf:rx}=Object,Vr=globalThis,Cf=Vr.trustedTypes,ax=Cf?Cf.emptyScript:"",lx=Vr.reactiveElementPolyfillSupport,hs=(t,e)=>t,Lu={toAttribute(t,e){switch(e){case Boolean:t=t?ax:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},If=(t,e)=>!ex(t,e),Wf={attribute:!0,type:String,converter:Lu,reflect:!1,useDefault:!1,hasChanged:If};Symbol.metadata??=Symbol("metadata"),Vr.litPropertyMetadata??=new WeakMap;var Rn=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=Wf){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&nx(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=ox(this.prototype,e)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);s?.call(this,l),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Wf}static _$Ei(){if(this.hasOwnProperty(hs("elementProperties")))return;let e=rx(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(hs("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(hs("properties"))){let n=this.properties,o=[...ix(n),...sx(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(Mu(i))}else e!==void 0&&n.push(Mu(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Bf(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:Lu).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),l=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:Lu;this._$Em=i;let d=l.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let l=this.constructor;if(i===!1&&(s=this[e]),o??=l.getPropertyOptions(e),!((o.hasChanged??If)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(l._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},l){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,l??n??this[e]),s!==!0||l!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:l}=s,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};Rn.elementStyles=[],Rn.shadowRootOptions={mode:"open"},Rn[hs("elementProperties")]=new Map,Rn[hs("finalized")]=new Map,lx?.({ReactiveElement:Rn}),(Vr.reactiveElementVersions??=[]).push("2.1.2");var Cu=globalThis,Ef=t=>t,Qr=Cu.trustedTypes,Nf=Qr?Qr.createPolicy("lit-html",{createHTML:t=>t}):void 0,Wu="$lit$",Sn=`lit$${Math.random().toFixed(9).slice(2)}$`,Iu="?"+Sn,ux=`<${Iu}>`,Oo=document,_s=()=>Oo.createComment(""),$s=t=>t===null||typeof t!="object"&&typeof t!="function",Eu=Array.isArray,Kf=t=>Eu(t)||typeof t?.[Symbol.iterator]=="function",Bu=`[ 	
\f\r]`,gs=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,jf=/-->/g,Hf=/>/g,Do=RegExp(`>|${Bu}(?:([^\\s"'>=/]+)(${Bu}*=${Bu}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),qf=/'/g,Uf=/"/g,Jf=/^(?:script|style|textarea|title)$/i,Nu=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=Nu(1),T=Nu(2),TB=Nu(3),jt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),zf=new WeakMap,Po=Oo.createTreeWalker(Oo,129);function Vf(t,e){if(!Eu(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return Nf!==void 0?Nf.createHTML(e):e}var Qf=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",l=gs;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===gs?m[1]==="!--"?l=jf:m[1]!==void 0?l=Hf:m[2]!==void 0?(Jf.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=Do):m[3]!==void 0&&(l=Do):l===Do?m[0]===">"?(l=i??gs,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?Do:m[3]==='"'?Uf:qf):l===Uf||l===qf?l=Do:l===jf||l===Hf?l=gs:(l=Do,i=void 0);let y=l===Do&&t[d+1].startsWith("/>")?" ":"";s+=l===gs?c+ux:_>=0?(o.push(p),c.slice(0,_)+Wu+c.slice(_)+Sn+y):c+Sn+(_===-2?d:y)}return[Vf(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},bs=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,l=0,d=e.length-1,c=this.parts,[p,m]=Qf(e,n);if(this.el=t.createElement(p,o),Po.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Po.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Wu)){let b=m[l++],y=i.getAttribute(_).split(Sn),x=/([.?@])?(.*)/.exec(b);c.push({type:1,index:s,name:x[2],strings:y,ctor:x[1]==="."?Yr:x[1]==="?"?Zr:x[1]==="@"?Xr:Mo}),i.removeAttribute(_)}else _.startsWith(Sn)&&(c.push({type:6,index:s}),i.removeAttribute(_));if(Jf.test(i.tagName)){let _=i.textContent.split(Sn),b=_.length-1;if(b>0){i.textContent=Qr?Qr.emptyScript:"";for(let y=0;y<b;y++)i.append(_[y],_s()),Po.nextNode(),c.push({type:2,index:++s});i.append(_[b],_s())}}}else if(i.nodeType===8)if(i.data===Iu)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(Sn,_+1))!==-1;)c.push({type:7,index:s}),_+=Sn.length-1}s++}}static createElement(e,n){let o=Oo.createElement("template");return o.innerHTML=e,o}};function Fo(t,e,n=t,o){if(e===jt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=$s(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=Fo(t,i._$AS(t,e.values),i,o)),e}var Gr=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??Oo).importNode(n,!0);Po.currentNode=i;let s=Po.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new mi(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new ta(s,this,e)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(s=Po.nextNode(),l++)}return Po.currentNode=Oo,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},mi=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=Fo(this,e,n),$s(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==jt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Kf(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&$s(this._$AH)?this._$AA.nextSibling.data=e:this.T(Oo.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=bs.createElement(Vf(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Gr(i,this),l=s.u(this.options);s.p(n),this.T(l),this._$AH=s}}_$AC(e){let n=zf.get(e.strings);return n===void 0&&zf.set(e.strings,n=new bs(e)),n}k(e){Eu(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(_s()),this.O(_s()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=Ef(e).nextSibling;Ef(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},Mo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,l=!1;if(s===void 0)e=Fo(this,e,n,0),l=!$s(e)||e!==this._$AH&&e!==jt,l&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=Fo(this,d[o+c],n,c),p===jt&&(p=this._$AH[c]),l||=!$s(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}l&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Yr=class extends Mo{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Zr=class extends Mo{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},Xr=class extends Mo{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=Fo(this,e,n,0)??u)===jt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},ta=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){Fo(this,e)}},Gf={M:Wu,P:Sn,A:Iu,C:1,L:Qf,R:Gr,D:Kf,V:Fo,I:mi,H:Mo,N:Zr,U:Xr,B:Yr,F:ta},dx=Cu.litHtmlPolyfillSupport;dx?.(bs,mi),(Cu.litHtmlVersions??=[]).push("3.3.3");var ke=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new mi(e.insertBefore(_s(),s),s,void 0,n??{})}return i._$AI(t),i};var ju=globalThis,fi=class extends Rn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=ke(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return jt}};fi._$litElement$=!0,fi.finalized=!0,ju.litElementHydrateSupport?.({LitElement:fi});var cx=ju.litElementPolyfillSupport;cx?.({LitElement:fi});(ju.litElementVersions??=[]).push("4.2.2");var Zf=()=>{},Hu=!1,ea=!1,Uu=!1;function Xf(t){Zf=t}function Y(){Hu||(Hu=!0,queueMicrotask(()=>{Hu=!1,ea?Uu=!0:th()}))}function th(){Uu=!1,Zf()}var px=1500,qu=0;function Yf(){clearTimeout(qu),ea=!1,Uu&&th()}function eh(){let t=({target:e})=>{!(e instanceof Element)||e.closest("[role=slider], select, canvas")||(ea=!0,clearTimeout(qu),qu=window.setTimeout(Yf,px))};addEventListener("pointerdown",t,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>setTimeout(Yf),!0);addEventListener("click",()=>ea=!1,!0)}function nh(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var j=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of nh(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function M(t,e,n){return zu(t,nh(e),n)}function zu(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=zu(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},l=zu(s[o],i,n);return l===void 0?delete s[o]:s[o]=l,s}var oh=t=>xn("GET",`/api/bench?run=${encodeURIComponent(t)}`),ih=t=>ve("/api/bench/tick",t),sh=t=>ve("/api/bench/weigh_cup",t),rh=(t,e)=>ve("/api/bench/anew",{run:t,batch:e}),ah=(t,e)=>ve("/api/bench/finish",{run:t,batch:e});var lt=(t,e)=>({name:t,label:e,unit:"mm"}),Kn=lt("height","Floor to brim"),na={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Ku={block:{words:"Box, loaf or slab",measures:[lt("length","Longer side at the brim"),lt("width","Shorter side"),Kn,na,{...lt("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[lt("floor_diameter","Across the floor"),lt("brim_diameter","Across the brim"),Kn]},fluted_cup:{words:"Fluted cup",measures:[lt("floor_diameter","Across the floor"),lt("brim_diameter","Across the brim"),Kn,{name:"flutes",label:"Flutes",unit:"",count:!0},lt("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},lt("across_flats","Across the flats"),Kn,na]},dome:{words:"Bowl",measures:[lt("diameter","Across the brim"),Kn]},half_ball:{words:"Half ball",measures:[lt("diameter","Across the brim")]},ball:{words:"Ball",measures:[lt("diameter","Across")]},half_ring:{words:"Half ring",measures:[lt("centre_diameter","Ring, middle to middle of the tube"),lt("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[lt("outer_floor_diameter","Cup, across the floor"),lt("outer_brim_diameter","Cup, across the brim"),lt("post_floor_diameter","Post, at its foot"),lt("post_brim_diameter","Post, at its top"),Kn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[lt("height","Height"),lt("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Kn,na],points:{columns:[lt("x","From the left"),lt("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[lt("side","Straight edge, tip to round"),Kn,na]}},lh=Object.fromEntries(Object.entries(Ku).map(([t,{words:e}])=>[t,e])),hi=t=>Ku[t]?.measures??[],Jn=t=>Ku[t]?.points;var Ju=(t,e)=>String($(t,e)??"").trim(),ws=t=>Ju(t,"/shape/kind"),Ie=(t,e)=>$(t,`/${e}`)!==void 0,Vu=t=>["body","skin"].includes(Ju(t,"/mesh/role"));function de(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function uh(t,e){return(Jn(ws(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function ys(t){return de(t,"/shape/points").flatMap((e,n)=>uh(t,e).every(Boolean)?[n]:[])}function oa(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return de(t,"/shape/points").flatMap((n,o)=>e(uh(t,n))?[o]:[])}var Qu=t=>de(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function dh(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(l=>$(t,`${o}/${l}`));e=M(e,o,s)};return Jn(ws(t))&&n("/shape/points",ys(t)),n("/water/weighings",Qu(t)),e}function ia(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?ys(t):Qu(t);return`${n}/${s[Number(o)]??o}${i}`}function vs(t){let e=[],n=i=>Ju(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(Ie(t,"shape")){let i=ws(t);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of hi(i))o(c||n(`/shape/${l}`),d.toLowerCase());let s=Jn(i);s&&o(ys(t).length>=s.least,`${s.least} points at least`)}if(Ie(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Qu(t).length>0,"a weighing of water")}return!Vu(t)&&!Ie(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var ne=t=>t.slice(0,t.lastIndexOf("/")+1),ce=t=>t.slice(t.lastIndexOf("/")+1),An=(t,e)=>{let n=ne(t);return n?mx(n+e):e};function mx(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Ee(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function gi(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(l=>l.file===s))return s}}var fx=["mould","formula","run","file","own_fats","own_tips"];function Gu(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?Gu(o,i):fx.includes(n)?[i]:[]})}function Yu(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...Gu(t)])[n,o]=[M(n,i,void 0),M(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Zu(t,e){let n=["/id",...Gu(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?M(i,s,$(e,s)):i,o)}var Lo={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?ce(e):Ee(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},Bo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>Ee(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Co={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?ce(e):Ee(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Xu=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>ce(o),written:o=>o,is_begun:()=>!0}),ks=Xu("studio","studios","name"),rn=Xu("fats","fats"),Vn=Xu("tips","tips","title"),oe={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>Ee(String(t.name),".json"),written:t=>({...dh(t),name:String(t.name??"").trim()}),is_begun:t=>Ie(t,"shape")||Ie(t,"mesh")};var ch={},ph={kind:Lo,id:"",file:"",version:null,shipped:!1,now:ch,saved:ch,unanswered:[]},Ht={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:ph,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},stock:{forms:[]},learned:{},ways:{},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(_x()),folded:new Set,units:hx(),announcement:""},a=Ht;function hx(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var td=t=>`numbers ${String(t.now.id??t.file)}`,gx=t=>({numbers:localStorage.getItem(td(t))??void 0,figure:""});function xs(t){f({quote_wish:{...Ht.quote_wish,...t}});let{numbers:e}=Ht.quote_wish;e?.trim()?localStorage.setItem(td(Ht.run),e):localStorage.removeItem(td(Ht.run))}var mh="set-up ";function _x(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function $x(){let t=[...Ht.open].filter(e=>e.startsWith(mh));localStorage.setItem("parts",JSON.stringify(t))}function f(t){Object.assign(Ht,t),Y()}var P=t=>f({announcement:t});function v(t,e){Object.assign(t,e),Y()}function Dn(t,e){let{[t]:n,...o}=Ht.formulas;f({formulas:e?{...o,[t]:e}:o})}function Ct(t,e){let n=new Set(Ht[t]);n.delete(e)||n.add(e),f({[t]:n}),e.startsWith(mh)&&$x()}function _i(t=ph){f({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:gx(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function ut(t){Ht.open.has(t)||f({open:new Set(Ht.open).add(t)})}function Wo({list:t,called:e},n,o={}){if(!Ht.files)return;let i=Ht.files[t].findIndex(d=>d.file===n),s={...i<0?{}:Ht.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},l=Ht.files[t].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,s),f({files:{...Ht.files,[t]:l}})}var bx=1e4,ed=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",ed);var sa=[],$i=()=>`bench ${a.files?.folder??""}`;function pe(){try{return[...JSON.parse(localStorage.getItem($i())??"[]"),...sa]}catch{return sa}}function nd(t){try{t.length?localStorage.setItem($i(),JSON.stringify(t)):localStorage.removeItem($i()),sa=[]}catch{sa=t}}var wx=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function fh(t){let e={...t,id:crypto.randomUUID(),tab:ed,at:Date.now()};nd([...pe().filter(n=>!wx(n,e)),e])}var ra=t=>nd(pe().filter(e=>!t(e))),hh=(t,e)=>nd(pe().map(n=>n.run===t?{...n,run:e}:n)),od=()=>pe().find(t=>t.tab===ed||Date.now()-t.at>bx);var mt=["pour","pipe","apart"],xt=["studio","own_fats","own_tips"],aa=t=>xt.includes(t);var id=t=>[...new Set(t.flatMap(e=>a.formulas[e]??[]))],sd=()=>xt.flatMap(t=>a.beside[t]??[]),gh=t=>t.filter(e=>e.theirs),Pn=t=>gh([...id(t==="apart"?["apart"]:["pour","pipe"]),...sd()])[0],la=()=>[a.run,...id(mt),...sd()].filter(t=>t.is_taken&&!t.theirs),ua=()=>gh([a.run,...id(mt),...sd()]);var Ts=()=>a.formulas.apart?"apart":"run",_h=t=>f({dangers:{...a.dangers,[Ts()]:t}});function rd(t){let e=t.cautions.filter(n=>n.severity==="danger");_h(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function $h(t){t.lye_heavy&&_h([{text:L(t),is_of_heat:!1}])}var bh={};function Ne(t,e){(bh[t]??=[]).push(e)}function wt(t,e){for(let n of bh[t]??[])n(e)}var Rs=new Map,je=t=>{Rs.set(t,void 0)},Qn=(t,e)=>{Rs.set(t,e)};function wh(t,e){if(!Rs.has(t))return!1;let n=Rs.get(t);return n===void 0&&Rs.set(t,e),n===void 0||n===e}async function xe({kind:t,name:e,text:n,from:o,goes_on:i,about_to:s,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:y=[]}=a.files??{},x=gi(e,[...d,...c,...p,...m,..._,...b,...y]);s?.(x);let G=await yx({file:x,version:null,text:n,from:o,goes_on:i});if(Wo(t,x,bt(G.there.text)??{}),G.is_new||l?.(G.there))return G.there}}async function yx(t){try{je(t.file);let e=await pi(t);return Qn(e.file,e.version),{is_new:!0,there:e}}catch(e){if(!(e instanceof w)||e.status!==409)throw e;return Qn(t.file,null),{is_new:!1,there:e.answer}}}var da=t=>`unsaved ${t.name} ${a.files?.folder??""} `;function Io({kind:t,id:e,file:n,version:o,shipped:i,now:s},l){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:st(s),copy:l};localStorage.setItem(da(t)+e,JSON.stringify(d))}catch{}}function ad(t,e){try{return JSON.parse(localStorage.getItem(da(t)+e)??"null")??void 0}catch{return}}var Gn=(t,e)=>localStorage.removeItem(da(t)+e),yh=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function ca(t){let e=da(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>ad(t,o)??[])}var vx=300,V=t=>t.now!==t.saved;function Eo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Mt(t,e,n=e){let o=await Pf(e),i=kx(t,JSON.parse(o.text),o.shipped),s=ad(t,n),l=s?.copy&&o.shipped?await xx(t,s,i):void 0;if(l)return Gn(t,n),Mt(t,l);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&Tx(p,s,o),p}var kx=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function xx(t,e,n){if(!a.files?.[t.list].some(s=>s.file===e.copy))return;let o=bt(e.text),i=bt((await Nt(e.copy)).text);if(!(!o||!i||st(o)===st(n)))return Yu(t.written(o),i)?e.copy:void 0}function Tx(t,e,n){let o=bt(e.text);if(!o||st(o)===st(t.now))return Gn(t.kind,t.id);v(t,{now:o}),!(e.version===n.version||n.shipped)&&(v(t,{version:e.version}),Ph(t,n))}function Lt(t,e){let n=t.now;v(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Io(t),wt("edited",{file:t,before:n})}var vh=new WeakMap,ld=async t=>vh.get(t),an=t=>kh(t,()=>Rx(t)),Yn=t=>kh(t,()=>t.shipped?xh(t,Th):Promise.resolve());function kh(t,e){let n=ld(t).then(e);return vh.set(t,n.catch(()=>{})),n}async function Rx(t){!V(t)||t.theirs||await xh(t,t.shipped||!t.file?Th:Rh)}async function xh(t,e){v(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof w&&v(t,{failed:L(n.complaint)}),n}}async function Th(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),l=await xe({kind:e,name:e.new_name(t),text:st(s),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>Io(t,m),is_own:({text:m})=>i!==void 0&&Yu(s,bt(m)??{})}),d=JSON.parse(l.text),c=Zu(s,d),p=t.now===o?d:c(t.now);Gn(e,n),v(t,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),V(t)&&Io(t),i!==void 0&&wt("copied",{file:t,from:i,renamed:c})}async function Rh(t){let{version:e,now:n}=t,o=st(t.kind.written(n));v(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{je(t.file);let i=await pi({file:t.file,version:e,text:o});Qn(t.file,i.version),Ss(t,n,i.version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;Qn(t.file,e),Sh(t,i.answer),V(t)&&!t.theirs&&await Rh(t)}}function Ss(t,e,n){v(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),V(t)?Io(t):Gn(t.kind,t.id),Wo(t.kind,t.file,e)}function Sh(t,{version:e,text:n}){if(n===st(t.kind.written(t.now)))return Ss(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(v(t,{unanswered:[]}),o)return v(t,{version:e,saved:void 0,theirs:void 0});let i=V(t)||t.theirs?void 0:bt(n);i?Sx(t,i,e):Ph(t,{version:e,text:n})}function Sx(t,e,n){wt("giving_way",{file:t}),v(t,{set_aside:t.now,is_taken:!0,now:e}),Ss(t,e,n),P(`${t.file} was changed outside this page, and stands here as it is now.`),wt("gave_way",{file:t})}function Ah(t,{version:e,text:n}){let o=bt(n);!o||t.theirs||V(t)||(wt("giving_way",{file:t}),v(t,{now:o}),Ss(t,o,e),wt("gave_way",{file:t}))}var Dh=t=>v(t,{set_aside:void 0,is_taken:void 0});function Ph(t,{version:e,text:n}){v(t,{theirs:{version:e,text:n}}),Io(t),P(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),wt("conflict",{file:t})}function Oh(t){if(!t.theirs)return;let e=bt(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return v(t,{failed:n})}wt("giving_way",{file:t}),v(t,{set_aside:t.now,now:e}),Ss(t,e,t.theirs.version),wt("gave_way",{file:t})}function Fh(t){t.theirs&&(v(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Io(t),wt("unwritten",{file:t}))}var No=({theirs:t})=>t?.text===null;function Mh(t){No(t)&&(Gn(t.kind,t.id),v(t,{saved:t.now,theirs:void 0,failed:void 0}),P(`${t.file} stays deleted.`),wt("left_deleted",{file:t}))}function Lh(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;f({typed:void 0}),Lt(t,e),v(t,{set_aside:o?void 0:n})}var Bh=t=>(t.theirs??t).version;function Ch(t,e){v(t,{id:e,file:e}),wt("renamed",{file:t,renamed:n=>n})}async function Wh(t){let{version:e,text:n}=await Nt(t.file),o=bt(n);if(!o||t.theirs||e===t.version)return;let i=Zu(t.now,o);if(V(t))return v(t,{version:e,now:i(t.now),saved:o});v(t,{version:e,now:o,saved:o}),wt("renamed",{file:t,renamed:i})}var Ih=t=>t.shipped||!t.file?[]:[[t.file,Bh(t)]];async function ud(t,e,n,o){let i=t.file,s=()=>Bh(t)===e&&t.file===i;if(!s()||(await ld(t),!s()))return!1;o(),await dd();let l=await Ax(i,n);return await ld(t),s()&&(Sh(t,l),V(t)&&!t.theirs&&wt("unwritten",{file:t})),!0}async function Ax(t,e){let n=await e(t);return n===null?{version:n,text:null}:Nt(t)}var dd=()=>new Promise(t=>setTimeout(t,vx));var Dx=400,Px=2e3,pd=new WeakMap;function Nh(t,e){clearTimeout(pd.get(t)),pd.set(t,window.setTimeout(()=>{ln(t)},e))}var Zn=(t=a.run)=>Nh(t,Dx),Ox=t=>t===a.run||t===a.order?.open;async function ln(t=a.run){clearTimeout(pd.get(t));try{await an(t),V(t)&&!t.theirs&&Ox(t)&&Zn(t)}catch(e){if(!(e instanceof w))throw e;e.may_pass&&Nh(t,Px)}}async function me(){for(let t of[a.run,a.order?.open])t?.file&&V(t)&&await ln(t)}var Eh=Promise.resolve(),cd=0;function Te(){if(!cd&&!Fx().length)return;++cd;let t=Eh.then(Mx).finally(()=>--cd);return Eh=t.catch(()=>{}),t}var Fx=()=>[...mt.map(t=>a.formulas[t]),...xt.map(t=>a.beside[t])].filter(t=>t!==void 0&&V(t)&&!t.theirs);async function Mx(){for(let t of mt){let e=a.formulas[t];!e||!V(e)||e.theirs||(e.shipped&&t!=="apart"&&await Yn(a.run),await an(e))}for(let t of xt){let e=a.beside[t];e&&V(e)&&!e.theirs&&await an(e)}}var He=t=>An(a.run.file,t);function ie(t,e){let n=He(t);return e?.some(o=>o.file===n)?n:t}function jh(t){let e=a.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=ie(String(n?.mould??""),a.files?.moulds);return{file:gi("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...Lx(e)}}}function Lx(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}function qt(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}var Xn=({lines:t})=>Array.isArray(t)?t:[];function On(t){let e=Xn(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var Re=new Map,As=new Set,Bx={changed:{},unreadable:[]},un=()=>new Set([...mt.flatMap(t=>a.formulas[t]??[]),...xt.flatMap(t=>a.beside[t]??[])]);function bi(){let t=Wx(),e=new Set([...un()].map(({file:o})=>o));for(let o of Re.keys())!t.has(o)&&!e.has(o)&&Re.delete(o);for(let o of As)t.has(o)||As.delete(o);let n=[...t].filter(o=>!Re.has(o));return n.length?Cx(n):void 0}async function Cx(t){for(let[e,n]of await Hh(t))Re.has(e)||Re.set(e,n)}async function Hh(t){let e=t.filter(o=>!As.has(o)),n=e.length?await ms(new Map(e.map(o=>[o,null]))):Bx;return gd(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var fd=async t=>(await Hh([t])).get(t)??null,hd=()=>new Map([...Re].filter(([t])=>!As.has(t)));function Wx(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(He(o)),o.includes("..")||t.add(o))},n=a.run.now;t.add(He("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of un()){let s=i.own_fats;typeof s=="string"&&s&&t.add(ne(o)+s).add(s)}e($(a.beside.studio?.now,"/own_tips"));for(let o of Ix())t.add(o);for(let o of xt)t.delete(a.beside[o]?.file??"");return t}function Ix(){let{open:t}=a.order??{},e=new Set(t?Xn(t.now).map(({run:p})=>An(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:s=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...s,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(An(t.file,"studio.json")),e.delete(a.run.file),e}function qh(t,{changed:e}){let n=Object.keys(e).filter(o=>Re.has(o)&&Re.get(o)===t.get(o));for(let o of n)Re.set(o,e[o]);return n}var gd=t=>t.forEach(e=>As.add(e));function Uh(){return[...un()].flatMap(({file:t,version:e})=>{let n=Re.get(t)??e;return Re.delete(t),n===e?[]:[t]})}var zh=0,jo=()=>zh;function _d(t){++zh;for(let{file:e}of un())t.includes(e)&&md.add(e);f({is_old:!0,changed_beside:Kh(a.changed_beside,t)})}var md=new Set,Kh=(t,e)=>[...new Set([...t,...e])];function Jh(){if(!a.changed_beside.length)return;let t=a.changed_beside.filter(e=>!md.has(e)&&!wh(e,Re.get(e)??null));md.clear(),f({changed_beside:[]}),t.length&&(f({taken_in:{files:Kh(a.taken_in?.files??[],t),since:Date.now()}}),P($d()))}function $d(){let{files:t=[]}=a.taken_in??{};if(!t.length)return"";let[e,n,o]=t.length===1?["was","it","it is"]:["were","them","they are"];return`${qt(t)} ${e} changed outside this page: the figures are of ${n} as ${o} now.`}var Ex=5e3;function Vh(){a.taken_in&&Date.now()-a.taken_in.since>Ex&&f({taken_in:void 0})}var Nx=1e3,jx=450,pa=!1,Ho=!1,bd=0;function rt(){f({is_old:!0}),pa?Ho=!0:wi()}async function wi(){if(pa){Ho=!0;return}pa=!0,Qh(!1);try{do Ho=!1,await Hx();while(Ho)}finally{pa=!1,Qh(!0)}}async function Yh(){let{run:t}=a,e={file:t.file,run:t.now},n=await Of(e)?.catch(()=>{});!n||t!==a.run||a.plan||yh()||(f({plan:n,planned:e}),rd(n))}var Qh=t=>{document.documentElement.dataset.settled=String(t)};function Gh(){let{run:t}=a,{apart:e}=a.formulas,{file:n,now:o}=t;return()=>{let i=t===a.run&&(n===t.file||o===t.now);return e===a.formulas.apart&&(e!==void 0||i)}}async function Hx(){let t=Gh();try{let e=Te();e&&await e;let n=bi();n&&await n,t=Gh();let{apart:o}=a.formulas;if(Pn(o?"apart":"run"))return f({is_old:!0});let i=jo(),s=o?jh(o.file):{file:a.run.file,run:a.run.now},l=await Ur(s);if(window.clearTimeout(bd),!t())return void(Ho=!0);f({plan:l,planned:s,complaint:void 0}),rd(l);let d=i===jo();f({is_old:Ho||!d}),d&&Jh()}catch(e){if(!(e instanceof w))throw e;if(!t())return void(Ho=!0);qx(e)}}function qx(t){f({is_old:!0}),window.clearTimeout(bd);let e=()=>{f({complaint:t.complaint}),$h(t.complaint)};a.complaint||!a.plan?e():bd=window.setTimeout(e,jx),t.may_pass&&window.setTimeout(rt,Nx)}var Zh=2e3,fe=t=>f({bench:{...a.bench,...t}}),Ux=()=>fe({acts:pe()});addEventListener("storage",({key:t})=>{t===$i()&&Ux()});function ma(){let{file:t}=a.run;!t||a.bench.run===t||(f({bench:{run:t,batches:[],complaints:[],acts:pe()}}),Fn().then(vd))}function Xh(t){let{file:e}=a.run;hh(t,e),a.bench.run===t&&fe({run:e,acts:pe()}),a.bench.run===e&&Fn()}function tg(){let{run:t,version:e}=a.bench;return e===void 0||t!==a.run.file?void 0:{run:t,version:e}}var Ds=0;async function Fn(){let{run:t}=a.bench,e=Ds;try{let n=await oh(t);if(t!==a.bench.run)return;if(e!==Ds)return await Fn();eg(n)}catch(n){if(!(n instanceof w))throw n;if(t!==a.bench.run)return;fe({failed:L(n.complaint)}),ng(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Fn(),Zh)}}var eg=({batches:t,version:e,complaints:n=[]})=>fe({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),ng=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),to=t=>a.bench.batches.find(e=>e.batch===t),yd=t=>a.bench.acts.filter(({run:e,batch:n})=>e===a.bench.run&&n===t),eo=t=>yd(t).length>0;function no(t,e){let n=yd(t).find(i=>i.key===e),o=to(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function qo(t){let e=yd(t).find(n=>n.reading!==void 0);return(e?e.reading:to(t)?.weigh_cup)??""}function og(t,e,n){let{run:o}=a.bench,s=to(t)!==void 0||!a.planned?void 0:st(a.planned.run);fh({run:o,batch:t,seen:e,text:s,...n}),fe({acts:pe(),chosen:t,told:void 0}),vd()}var ig=(t,e,n,o)=>og(t,e,{key:n,done:o}),sg=(t,e,n)=>og(t,e,{reading:n||null}),wd=!1;async function vd(){if(!wd){wd=!0;try{await navigator.locks.request($i(),zx)}finally{wd=!1}pe().length&&setTimeout(()=>{vd()},Zh)}}async function zx(){for(let t=od();t;t=od())if(!await Kx(t))return}async function Kx(t){let{id:e}=t;try{let n=await Jx(t);return++Ds,ra(o=>o.id===e),Vx(n,t.run),!0}catch(n){if(!(n instanceof w))throw n;return ng(n)?(fe({unsent:L(n.complaint)}),!1):(await Qx(t,n),!0)}}function Jx({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:l}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?ih({...d,key:i,done:s??!1}):sh({...d,reading:l??null})}function Vx(t,e){let n=pe();if(e!==a.bench.run)return fe({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,l)=>s.batch-l.batch);fe({acts:n,batches:i,unsent:void 0})}async function Qx(t,{complaint:e}){++Ds,ra(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${L(e)}.`;fe({acts:pe(),unsent:void 0,told:{batch:t.batch,words:n}}),P(n),rt(),await Fn()}async function Ps(t){let{run:e}=a.bench;await rg(t,async()=>{let n=await rh(e,t);return ra(o=>o.run===e&&o.batch===t),n})}var kd=t=>rg(t,()=>ah(a.bench.run,t));async function rg(t,e){let{run:n}=a.bench;try{let o=await e();if(++Ds,n!==a.bench.run)return;eg(o),fe({acts:pe(),told:void 0,chosen:t})}catch(o){if(!(o instanceof w))throw o;fe({told:{batch:t,words:L(o.complaint)}})}}var ag=t=>fe({chosen:t,told:void 0}),lg=()=>fe({told:void 0});var Gx=300,Yx=1200,fa="",ug=0;function Os(){let t={run:{file:a.run,now:a.run.now}};for(let e of mt){let n=a.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of xt){let n=a.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function Uo(t=""){let e=performance.now();t&&t===fa&&e-ug<=Yx&&a.past.length||xd(Os()),f({future:[]}),fa=t,ug=e}var xd=t=>f({past:[...a.past,t].slice(-Gx)});function oo(t){xd(dg(Os(),t,()=>t.saved??{}))}function dg(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function Td(t,e){let n=o=>o.map(i=>dg(i,t,e));f({past:n(a.past),future:n(a.future)})}function Fs(){let t=a.past.at(-1);t&&(f({past:a.past.slice(0,-1),future:[...a.future,Os()]}),cg(t,"Undone"))}function Rd(){let t=a.future.at(-1);t&&(f({past:[...a.past,Os()],future:a.future.slice(0,-1)}),cg(t,"Redone"))}function cg(t,e){fa="",f({typed:void 0});for(let n of[...xt,...mt,"run"])Zx(n,t);P(e)}function Zx(t,e){let n=e[t];if(aa(t))return Xx(t,n);let o=t==="run"?n?.file===a.run:a.formulas[t]!==void 0;!n||!o||(t!=="run"&&Dn(t,n.file),n.file.now!==n.now&&Lt(n.file,n.now))}function Xx(t,e){e&&e.file===a.beside[t]&&e.file.now!==e.now&&Lt(e.file,e.now)}var yi=t=>t===a.run||mt.some(e=>a.formulas[e]===t)||xt.some(e=>a.beside[e]===t);Ne("giving_way",({file:t})=>{yi(t)&&(fa="",xd(Os()),f({typed:void 0}))});for(let t of["copied","renamed"])Ne(t,({file:e,renamed:n})=>Td(e,n));var tT=1200,Sd="",pg=0;function vi(t,e=""){let n=performance.now(),o=e&&e===Sd&&n-pg<=tT&&t.past.length;v(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[Sd,pg]=[e,n]}function ha(t){let e=t.past.at(-1);e&&(v(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),mg(t,e,"Undone"))}function ga(t){let e=t.future.at(-1);e&&(v(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),mg(t,e,"Redone"))}function mg({open:t},e,n){Sd="",f({typed:void 0}),Lt(t,e),P(n)}function io(t){return t==="run"?a.run:t==="order"?a.order?.open:aa(t)?a.beside[t]:a.formulas[t]}var eT=t=>io(t)?.now,g=(t,e)=>$(eT(t),e),O=(t,e)=>String(g(t,e)??"");function tt(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function ft(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function fg(t,e){t==="order"&&a.order?vi(a.order,e):Uo(e===void 0?"":`${t} ${e}`)}function X(t,e,n){let o=io(t);!o||$(o.now,e)===n||(fg(t,e),Lt(o,M(o.now,e,n)))}function hg(t,e){let n=io(t);n&&(fg(t),f({typed:void 0}),Lt(n,e(n.now)))}function qe(t){Uo(),f({typed:void 0});for(let[e,n]of t){let o=io(e);o&&Lt(o,n(o.now))}}var Dd=(t,e)=>{let{[t]:n,...o}=a.beside;f({beside:e?{...o,[t]:e}:o})};function _a(t){for(let e of xt)a.beside[e]===t&&Dd(e,void 0)}async function nT(t,e){try{return await Mt(t,e)}catch(n){if(!(n instanceof w||n instanceof SyntaxError))throw n;return}}async function so(t,e,n,o=()=>!0){let i=()=>a.beside[t]?.file===n?a.beside[t]:void 0;if(i())return i();let s=await nT(e,n);return i()||!o()?i():(Dd(t,s),s&&V(s)&&(oo(s),wt("unwritten",{file:s})),s?.theirs&&wt("conflict",{file:s}),s)}var Ad=()=>He("studio.json");async function ki(t=!1){let e=Ad(),n=(a.files?.studios??[]).some(o=>o.file===e);a.beside.studio?.file!==e&&(n||t?await so("studio",ks,e,()=>e===Ad()):Dd("studio",void 0))}async function $a(){a.run.shipped&&await Yn(a.run);let t=Ad();await so("studio",ks,t)||(await oT(t),await so("studio",ks,t))}async function oT(t){try{je(t);let{version:e}=await pi({file:t,version:null,text:st({schema:"brimwright.studio/1"})});Qn(t,e)}catch(e){if(!(e instanceof w)||e.status!==409)throw e}Wo(ks,t)}var gg=(t,e)=>ne(t.file)+e;async function iT(t){try{return bt((await Nt(t)).text)!==void 0}catch(e){if(!(e instanceof w))throw e;return!1}}async function ba(t){let e=a.formulas[t];if(!e)return;e.shipped&&await Yn(e);let n=String($(e.now,"/own_fats")??"");if(n){let l=gg(e,n);return so("own_fats",rn,await iT(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&ne(l.file)===ne(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await Od(rn,gg(e,"my.fats.json"),i);return X(t,"/own_fats",ce(s)),so("own_fats",rn,s)}async function Pd(){a.run.shipped&&await Yn(a.run);let t="/pipe/beads/own_tips",n=String($(a.run.now,t)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return so("own_tips",Vn,He(n));let o=ne(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&ne(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Od(Vn,`${o}my.tips.json`,s);return a.beside.studio?X("studio","/own_tips",ce(l)):X("run",t,ce(l)),so("own_tips",Vn,l)}async function Ms(t,e){await so(t===rn?"own_fats":"own_tips",t,e)&&f({held_open:e})}function ro(){let{view:t,held_open:e,beside:n}=a,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function wa(t,e){let n=t===rn;await Ms(t,await Od(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function Od(t,e,n){let{file:o}=await xe({kind:t,name:e,text:st(n)});return Wo(t,o),o}function _g(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(ce(e));for(let i of mt)t===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&X(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===a.beside.own_tips&&n(a.run.now,o)&&X("run",o,t.file)}var zo=[],xi=[],Ls=()=>zo.at(-1),Md=()=>xi.at(-1);function ka(t){zo=[...zo,t],xi=[],f({list_told:t.words}),P(t.words)}async function bg(){let t=Ls();t&&(await t.undo(),zo=zo.slice(0,-1),xi=[...xi,t],f({list_told:""}),P("Undone"),await Se())}async function wg(){let t=Md();t&&(await t.redo(),xi=xi.slice(0,-1),zo=[...zo,t],f({list_told:t.words}),P("Redone"),await Se())}async function Se(){let[t,e]=await Promise.all([qr(),df()]);f({files:t,removed:e})}async function yg(t,e){let{$schema:n,...o}=JSON.parse((await Nt(e.file)).text),i=`${e.name||Ti(e.file)}, copy`,s={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},l=t.called?t.new_name(Eo(t,s)):Ee(i,Ld(e.file)),{file:d}=await xe({kind:t,name:l,text:st(s),from:e.file});await Se();let c="";return ka({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await ya(d,!0),redo:()=>va(d,c)}),d}var Ld=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",Ti=t=>ce(t).slice(0,-Ld(t).length||void 0),vg=(t,e)=>ne(t)+e+Ld(t),$g=t=>[a.run,a.order?.open,...mt.map(e=>a.formulas[e]),...xt.map(e=>a.beside[e])].find(e=>e?.file===t);async function kg(t,e,n){let o={name:e.name,note:e.note,stem:Ti(e.file)};await Fd(t,e.file,n),await Se();let i=vg(e.file,n.stem);ka({words:`Changed ${n.name||i}.`,undo:()=>Fd(t,i,o),redo:()=>Fd(t,e.file,n)})}async function Fd(t,e,{name:n,note:o,stem:i}){let s=$g(e),l=s??await Mt(t,e),{note:d,...c}=l.now,p={...c,...o&&{note:o}},m=t.called?M(p,`/${t.called}`,n||void 0):p;if(st(m)!==st(l.now)&&(s&&yi(s)&&Uo(),s===a.order?.open&&a.order&&vi(a.order),Lt(l,m),await an(l),l.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let _=vg(e,i);if(_===e)return;[e,_].forEach(je);let{renamed_in:b}=await af(e,_);b.forEach(je),s&&Ch(s,_);for(let y of b){let x=$g(y);x&&await Wh(x)}}async function ya(t,e){je(t);let{removed:n}=await lf(t,e);a.run.file===t&&_i(),a.order?.open.file===t&&f({order:void 0});let o=xt.map(i=>a.beside[i]).find(i=>i?.file===t);return o&&_a(o),n}function va(t,e){return je(t),uf(e)}async function xg(t,e){let n=await ya(t.file,e);await Se(),ka({words:`Removed ${t.name||t.file}.`,undo:()=>va(t.file,n),redo:async()=>n=await ya(t.file,!0)})}async function Tg({removed:t,file:e,name:n}){await va(e,t),await Se();let o="";ka({words:`${n||e} is back.`,undo:async()=>o=await ya(e,!0),redo:()=>va(e,o)})}async function Rg({removed:t,file:e,name:n}){f({removed:await cf(t),list_told:""}),P(`${n||e} is deleted for good.`)}var Sg=0;function Tt(){let t=++Sg;return()=>t===Sg}function Ag(t){let e=$(a.run.now,`/${t}/formula`);return typeof e=="string"&&e?ie(e,a.files?.formulas):void 0}async function ao(){await Promise.all(["pour","pipe"].map(sT))}async function sT(t){let e=Ag(t),n=()=>e!==void 0&&a.formulas[t]?.file===e;if(n()||(Dn(t,Dg(e)),e===void 0||n()))return;let o=await rT(e);if(!o||Ag(t)!==e||n())return;let i=Dg(e);Dn(t,i??o),!i&&(V(o)&&(oo(o),wt("unwritten",{file:o})),o.theirs&&wt("conflict",{file:o}))}var Dg=t=>mt.map(e=>a.formulas[e]).find(e=>e&&e.file===t),Bd=new Map;function rT(t){let e=Bd.get(t)??Mt(Co,t).catch(aT);return Bd.set(t,e),e.finally(()=>Bd.delete(t))}function aT(t){if(!(t instanceof w||t instanceof SyntaxError))throw t}var Bs=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Ri(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:l,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function Og(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],y=3*c[p+(_+1)%3],x=d[b+i]-e,G=d[y+i]-e;if(x>0==G>0)continue;let Et=x/(x-G),Ao=[1e3*(d[b]+Et*(d[y]-d[b])),1e3*s*(d[b+o]+Et*(d[y+o]-d[b+o]))];x>0?m.push(Ao):m.unshift(Ao)}m.length===2&&l.push([m[0],m[1]])}return l}function Fg(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],l=n.get(e(i[0]))?.shift();for(;l;)s.push(l[0]),l=n.get(e(l[1]))?.shift();s.length>2&&o.push(s)}return o}function Cs(t){let e=t.positions,[n,o,i,s,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),l=Math.min(l,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:Fg(Og(t,c)),left:1e3*i,right:1e3*s,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function Mg(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>Fg(Og(t,n+s*o,"level"))).reduce((s,l)=>Pg(l)>1.001*Pg(s)?l:s)}function Pg(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function Cd(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>e||Math.max(l,p)<e))for(let m of l===p?[s,c]:[s+(e-l)/(p-l)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var Lg=40,lT=2e3,Wd=0;async function Bg(t){let e=await on({kind:"glb",gauge:t}),n=Ri(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Si(t){let[e,n]=await Promise.all([nn(t),Bg(t)]),o=Cs(n);return{gauge:e,outline:o,above:Mg(n,o)}}async function uT(t){let{pockets:e}=await nn(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:Lg},(i,s)=>`${(n*(s+1)/Lg).toFixed(4)} mm`);return nn({...t,depth:o})}function Ue(){dT()}async function dT(){let t=$(a.run.now,"/pour/mould");if(typeof t!="string")return;let e=++Wd,n=ie(t,a.files?.moulds);try{let[o,i]=await Promise.all([uT({file:n}),Bg({file:n})]);e===Wd&&f({measured:{mould:n,gauge:o,outline:Cs(i)},measuring_failed:void 0})}catch(o){if(e!==Wd)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Ue,lT)}}var Id=(t,e="")=>xn("GET",`/api/record?run=${encodeURIComponent(t)}&batch=${encodeURIComponent(e)}`),Cg=t=>ve("/api/record/begin",t),xa=t=>ve("/api/record/note",t);var cT=1e4,Nd=2500,jd=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",jd);var Ta=[],Ai=()=>`notes ${a.files?.folder??""}`;function Mn(){try{return[...JSON.parse(localStorage.getItem(Ai())??"[]"),...Ta]}catch{return Ta}}function Hd(t){try{t.length?localStorage.setItem(Ai(),JSON.stringify(t)):localStorage.removeItem(Ai()),Ta=[]}catch{Ta=t}}var Ed=(t,e)=>t.batch===e.batch&&t.key===e.key,dn=(t,e)=>a.record.acts.filter(n=>Ed(n,{batch:t,key:e})).at(-1);function Wg(t){let e=Mn(),n=e.filter(i=>Ed(i,t)).at(-1),o={...t,seen:n?.seen??t.seen,id:crypto.randomUUID(),tab:jd,at:Date.now()};Hd([...e.filter(i=>!Ed(i,t)||i.was_sent&&!i.refused),o])}var qd=t=>Hd(Mn().map(t)),Ra=(t,e)=>qd(n=>n.id===t?{...n,...e}:n),Ws=t=>Hd(Mn().filter(e=>!t(e))),pT=({is_typed:t,lacks:e,refused:n,at:o})=>!n&&!e&&(!t||Date.now()-o>=Nd),Ud=()=>Mn().find(t=>pT(t)&&(t.tab===jd||Date.now()-t.at>cT));var Ig=2e3,Ut=t=>f({record:{...a.record,...t}}),Di=()=>Ut({acts:Mn()});addEventListener("storage",({key:t})=>{t===Ai()&&Di()});function uo(){let{file:t}=a.run;!t||a.record.run===t||(f({record:{run:t,batches:[],acts:Mn(),chosen:mT(t)}}),lo().then(Is))}function Eg(t){a.record.run===t&&(Ut({run:a.run.file}),lo())}var Ng=t=>`record ${t}`,mT=t=>sessionStorage.getItem(Ng(t))??void 0,Jd=()=>a.record.run===a.run.file?a.record.version:void 0,Kd=0;async function lo(){let{run:t,chosen:e}=a.record,n=Kd;try{let o=await Id(t,e);if(t!==a.record.run)return;if(n!==Kd||e!==a.record.chosen)return await lo();let{batches:i,run_batches:s}=o.record;Ut({batches:i,of:s??a.record.of,version:o.version,failed:void 0})}catch(o){if(!(o instanceof w))throw o;if(t!==a.record.run)return;Ut({failed:L(o.complaint)}),jg(o)&&setTimeout(()=>a.record.failed!==void 0&&void lo(),Ig)}}var jg=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);function Sa({record:t},e){if(++Kd,e!==a.record.run)return;let n=new Set(t.batches.map(({begun:d})=>d.id)),o=d=>n.has(d.begun.id),i=d=>t.batches.find(({begun:c})=>c.id===d.begun.id)??d,s=t.batches.filter(({begun:d})=>!a.record.batches.some(c=>c.begun.id===d.id)),l=[...a.record.batches.map(d=>o(d)?i(d):d),...s];Ut({batches:l,of:t.run_batches??a.record.of})}function Aa(){let{batches:t,chosen:e}=a.record;return t.find(({begun:n})=>n.id===e)??t.at(-1)}var Vd=(t,e)=>sessionStorage.setItem(Ng(t),e);function Ko(t){Vd(a.record.run,t),Ut({chosen:t}),lo()}var Jo=(t,e)=>a.record.batches.filter(n=>n.number===t&&(!e||new Date(n.begun.begun_at)>=new Date(e))).at(-1),Da=({pieces:t,written:e})=>`${t} ${t===1?"piece":"pieces"}, ${e}`;function Pa({blanks:t,cured:e,rows:n},o){let i=/^cured\.(.+)$/.exec(o)?.[1],s=i&&e?.find(({on:l})=>l===i);return i?s?Da(s):"":[...t??[],...n??[]].find(l=>l.key===o)?.noted??""}function Qd(t,{key:e,text:n,value:o,is_left:i,lacks:s}){let l=Pa(t,e),d=dn(t.begun.id,e);if(o===l&&!s&&(!d||!d.was_sent&&d.seen===l))return d&&Ws(({id:m})=>m===d.id),Di();if(d?.value===o&&!d.lacks==!s&&(d.refused??!d.is_typed))return;let{run:p}=a.record;Wg({run:p,batch:t.begun.id,key:e,text:n,value:o,seen:l,is_typed:!i,lacks:s}),Di(),i?Is():setTimeout(()=>{Is()},Nd+50)}var co=(t,e,n)=>Qd(t,{key:e,text:n,value:n,is_left:!0});function Hg(t){let{refused:e,value:n}=t;if(!e)return;let{answers:o={confirmed:n}}=e,i=(l=[],d)=>d===void 0?l:[...l,d],s=e.is_asked?{confirmed:i(t.confirmed,o.confirmed),beyond:i(t.beyond,o.beyond)}:{seen:e.noted??t.seen};Ra(t.id,{...s,refused:void 0}),Di(),Is()}function qg(t){Ws(({id:e})=>e===t.id),Di()}var zd=!1;async function Is(){if(!zd){zd=!0;try{await navigator.locks.request(Ai(),fT)}finally{zd=!1}Mn().some(t=>!t.refused&&!t.lacks)&&setTimeout(()=>{Is()},Ig)}}async function fT(){for(let t=Ud();t;t=Ud())if(!await gT(t))return}var hT=({batch:t,run:e})=>a.record.batches.some(({begun:n})=>n.id===t)?a.record.run:e;async function gT(t){let{id:e,batch:n,key:o,value:i,seen:s,confirmed:l,beyond:d}=t,c=hT(t);Ra(e,{was_sent:!0});try{let p=await xa({run:c,batch:n,act:e,set:{[o]:i||null},seen:{[o]:s||null},confirmed:l,"beyond-stock":d});return Ws(m=>m.id===e),_T(t,p),Sa(p,c),Ut({acts:Mn(),unsent:void 0}),!0}catch(p){if(!(p instanceof w))throw p;return jg(p)?(Ut({unsent:L(p.complaint)}),!1):(await $T(t,p),!0)}}function _T({batch:t,key:e},{record:n}){let o=n.batches.find(({begun:i})=>i.id===t);qd(i=>i.batch!==t?i:i.key===e?o?{...i,seen:Pa(o,e)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function $T({id:t,value:e},{complaint:n}){let{asks:o,choices:i,problem:s}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,d=l===!0?"":l,c=o?s:L(n);d===e?Ws(p=>p.id===t):Ra(t,{refused:{words:c,is_asked:o==="confirmed"||o==="beyond-stock",noted:d,...bT(i)}}),Di(),await lo()}function bT(t=[]){let e=t[0]?.confirmed,n=t[0]?.["beyond-stock"];return e===void 0&&n===void 0?{}:{answers:{confirmed:e,beyond:n},is_lye:e===wT}}var wT="lye-heavy",Oa=t=>a.record.acts.filter(e=>e.batch===t&&(e.refused??e.lacks)).length;async function Fa(t,e){if(!t||!e)return;let n=t.blanks?t:await yT(t.begun.id),o=n?.blanks?.filter(Gd)??[];n&&o.length===1&&co(n,o[0].key,e)}async function yT(t){try{return(await Id(a.record.run,t)).record.batches.find(({begun:e})=>e.id===t)}catch(e){if(!(e instanceof w))throw e;return}}var Gd=({key:t})=>/^topping(-\d+)?\.cup$/.test(t);var Ug=()=>xn("GET","/api/stock?names"),zg=t=>ve("/api/stock/act",t),Kg=t=>xn("GET",`/api/trail?of=${encodeURIComponent(t)}`);var vT=2e3,Ln=t=>f({stock:{...a.stock,...t}}),Jg=()=>a.view==="shelf"||a.view==="trail",Ma=()=>Jg()?a.stock.version:void 0,kT=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);async function po(){try{let{version:e,stock:n}=await Ug();Ln({version:e,list:n,failed:void 0})}catch(e){if(!(e instanceof w))throw e;Ln({failed:L(e.complaint)}),kT(e)&&setTimeout(()=>Jg()&&a.stock.failed!==void 0&&void po(),vT)}let{trail:t}=a.stock;a.view==="trail"&&t&&await Vg(t.of)}function Ae(t){let e=a.stock.trail?.of===t;f({view:"trail",stock:{...a.stock,trail:e?a.stock.trail:{of:t}}}),a.stock.version===void 0?po():Vg(t)}async function Vg(t){let e=n=>a.stock.trail?.of===t&&Ln({trail:n});try{let{version:n,trail:o}=await Kg(t);e({of:t,trail:o}),Ln({version:n})}catch(n){if(!(n instanceof w))throw n;e({of:t,complaint:L(n.complaint)})}}var Qg=()=>`shelf ${a.files?.folder??""}`;function Yd(t){sessionStorage.setItem(Qg(),JSON.stringify(t)),Ln({forms:t})}function Gg(){try{Ln({forms:JSON.parse(sessionStorage.getItem(Qg())??"[]")})}catch{Ln({forms:[]})}}var Zd=(t,e)=>t.kind===e.kind&&t.of===e.of,Bn=t=>a.stock.forms.find(e=>Zd(e,t));function Xd(t){if(Bn(t))return;let e={on:xT(),...t.typed};Yd([...a.stock.forms,{sources:[],confirmed:[],act:crypto.randomUUID(),...t,typed:e}]),Ln({told:void 0})}var tc=t=>Yd(a.stock.forms.filter(e=>!Zd(e,t))),Pi=(t,e)=>Yd(a.stock.forms.map(n=>Zd(n,t)?{...n,...e}:n)),ze=(t,e)=>Pi(t,{...e,typed:{...t.typed,...e.typed},act:crypto.randomUUID(),confirmed:[],complaint:void 0});function Vo(t,e,n){Pi(t,{complaint:{file:"",field:e,problem:n,remedy:"",line:n}}),P(n)}async function La(t,e){let n=Bn(t);if(!n||n.is_asking)return!1;Pi(t,{is_asking:!0,complaint:void 0});try{let{stock:o}=await zg({...e,act:n.act,confirmed:n.confirmed,seen:n.seen}),i=o.done.length?o.done:["It was recorded already."];return tc(t),Ln({told:{of:t.of,sentences:i}}),P(i.join(" ")),await po(),!0}catch(o){if(!(o instanceof w))throw o;return Pi(t,{is_asking:!1,complaint:o.complaint}),P(`Not recorded: ${o.complaint.problem}`),o.complaint.asks==="seen"&&await po(),!1}}function Yg(t,e){Pi(t,{confirmed:[...t.confirmed,e],complaint:void 0})}var Zg=(t,e)=>Pi(t,{seen:e,complaint:void 0});function xT(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var Es=()=>f({own_fats:{}});function mo(t){let e=Ns(t);return Array.isArray(e)?[...e,...a.fats]:a.fats}function Ns(t){let e=a.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=a.beside.own_fats;if(o&&[ne(e.file)+n,n].includes(o.file))return t_(o.now)??"none";let i=`${e.file}
${n}`,s=a.own_fats[i];return s||(Xg(i,"waiting"),TT(n,e.file).then(l=>Xg(i,l)),"waiting")}var Xg=(t,e)=>f({own_fats:{...a.own_fats,[t]:e}});async function TT(t,e){for(let n of new Set([ne(e)+t,t])){let o=t_(await RT(n));if(o)return o}return"none"}var t_=t=>Array.isArray(t?.fats)?t.fats.map(ST):void 0;async function RT(t){try{return bt((await Nt(t)).text)}catch{return}}var ST=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:AT(n)});function AT(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Oi=[],js;function Ba(){Oi.length=0;for(let{file:t,shipped:e}of a.files?.moulds??[])e||Oi.push(t);js===void 0&&e_()}function ec(t){let e=a.own_moulds[t];return!e&&t!==js&&!Oi.includes(t)&&Oi.push(t),js===void 0&&Oi.length&&e_(),e}async function e_(){for(;(js=Oi.shift())!==void 0;){let t=js,e=await PT(t);e&&f({own_moulds:{...a.own_moulds,[t]:e}})}}var DT=2e3;async function PT(t){try{let{pockets:e}=await nn({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof w))throw e;if(e.may_pass){window.setTimeout(()=>ec(t),DT);return}let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var i_=()=>f({own_tips:{}}),nc=!1;function Hs(){return!a.tips&&!nc&&(nc=!0,yf().then(t=>f({tips:t}),s_).finally(()=>nc=!1)),a.tips??[]}function oc(t){let e=He(t),n=a.beside.own_tips;if(n?.file===e)return o_(n.now);let o=a.own_tips[e];return o||!t||a.typed?o??[]:(n_(e,[]),Nt(e).then(({text:i})=>n_(e,o_(bt(i))),s_),[])}var n_=(t,e)=>f({own_tips:{...a.own_tips,[t]:e}});function o_(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function s_(t){if(!(t instanceof w))throw t}var Ca=300,OT=5e3,d_=2e3,FT=500,r_=!1,qs=new AbortController,Wa=()=>qs.abort(),c_=()=>document.visibilityState==="hidden";function Ia(){if(r_)return;r_=!0;let t=async()=>{qs=new AbortController;let e=await MT(qs).then(()=>c_()?OT:Ca,()=>qs.signal.aborted?Ca:d_);await a_(Ca),await a_(e-Ca,qs.signal),t()};t()}var a_=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),p_=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...un()],ic=()=>{let t=tg();return t&&{...t,record:Jd()}},m_=()=>new Map(p_().flatMap(Ih)),l_=()=>JSON.stringify([[...m_().keys()],[...hd().keys()],ic()?.run??null,Jd()??null,Ma()??null]);async function MT(t){let e=Uh();e.length&&await u_(e);let[n,o]=[m_(),hd()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),l=s&&!c_()?await LT(i,t):await ms(i,{bench:ic(),stock:Ma()});l.bench!==void 0&&await Fn(),l.record!==void 0&&await lo(),l.stock!==void 0&&await po(),gd(l.unreadable),await BT(n,l);let d=qh(o,s?l:await ms(o));d.length&&await u_(d)}async function LT(t,e){let[n,o]=[l_(),Date.now()],i=window.setInterval(()=>{(l_()!==n||Date.now()-o>pf+d_)&&e.abort()},FT);try{return await mf(t,{bench:ic(),stock:Ma()},e.signal)}finally{window.clearInterval(i)}}async function BT(t,{changed:e}){let n=un();for(let o of p_()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await CT(o,i):await ud(o,i,fd,()=>{}))}}async function CT(t,e){let n=!1,o=()=>{n=!0,_d([t.file])};try{await ud(t,e,fd,o)&&Es()}finally{n&&rt()}}async function u_(t){_d(t);try{await dd(),Es(),i_(),f({measured:void 0}),Ue(),Ba(),await Promise.all([ao(),ki(!0)])}finally{rt()}}async function h_(t){let e=await Df();f({files:e});let n=Af(e,t.run);try{await Ea(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof w?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function rc(){try{let[t,e]=await Promise.all([bf(),wf()]);f({fats:t,catalogue:e})}catch(t){if(!(t instanceof w))throw t;t.may_pass?window.setTimeout(()=>{rc()},WT):f({fault:t.message})}}var WT=2e3,IT=()=>new Promise(t=>setTimeout(t,400)),sc={};function Cn(t,e){return Tt(),Ea(t,e)}async function Ea(t,e="weigh"){if(!t)return f({view:"runs"});let n=sc={name:t},o=a.view;a.run.file&&V(a.run)&&await ln();let i=await Mt(Lo,t);if(sc!==n||(_i(i),ma(),await Promise.race([Yh(),IT()]),a.run!==i))return;a.view===o&&sc===n&&f({view:e}),localStorage.setItem("run",i.file),V(i)&&(oo(i),Zn());let s=wi().finally(Ue);await Promise.all([s,ao(),ki()]),Ia()}var f_=()=>(a.files?.studios??[]).some(t=>t.file==="studio.json");async function Na(t){let e=Tt(),n=a.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(i.cut={bar:{thickness:t.slice},...f_()?{}:{kerf:""}}),f_()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!a.run.shipped&&(i.money=n.money));let{file:s}=await xe({kind:Lo,name:Ee(t.name,".run.json"),text:st(i)});e()&&(ut("set-up pour"),t.slice&&ut("set-up cut"),await Cn(s,"set-up"))}var ET="examples/plain_bars.run.json";function se(t){Es();let e=Tn(a.view)?a.view:a.came_from;f({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Us(t){let e=Tt(),n=["pour","pipe"].find(i=>a.run.file&&a.formulas[i]?.file===t);if(n)return se(n);a.run.file||await Ea(ET,"reading");let o=await Mt(Co,t);e()&&NT(o)}function NT(t){f({run_steps:{past:a.past,future:a.future},past:[],future:[]}),Dn("apart",t),V(t)&&oo(t),f({plan:void 0,complaint:void 0}),se("apart"),wi()}async function jT(){let t=a.formulas.apart!==void 0;return await ja()?(f({view:t?"weigh":a.came_from,typed:void 0}),!0):!1}async function ja(){return a.formulas.apart?await HT()?(wi(),!0):!1:!0}async function HT(){try{await Te()}catch(e){if(!(e instanceof w))throw e;return f({complaint:e.complaint}),!1}if(a.formulas.apart?.theirs)return P("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Dn("apart",void 0);let t={...a.dangers,apart:[]};return f({dangers:t,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function g_(t){let e=a.view==="formula"&&a.formulas[a.formula_of]===t,n=a.formulas.apart===t;for(let o of["pour","pipe"])a.formulas[o]===t&&Dn(o,void 0);n&&await ja(),e&&f({view:n?"formulas":"set-up",typed:void 0})}async function ac(t){let{file:e}=a.formulas.apart;await jT()&&X("run",`/${t}/formula`,e)}var qT=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),__=t=>b_(qT(t));async function $_(t,e){let{$schema:n,...o}=JSON.parse((await Nt(t)).text);await b_({...o,name:e},t)}async function b_(t,e){let n=Tt(),o=Ee(String(t.name),".formula.json"),{file:i}=await xe({kind:Co,name:o,text:st(t),from:e});n()&&await Us(i)}var UT=30,zT=2e3,w_=0,lc=!1,uc=!1;function dc(t,e,n){let o=e==="mesh"?a.mesh:void 0;f({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),Ha()}var cn=()=>f({mould:void 0,mesh:void 0}),Fi=(t,e,n)=>dc(Eo(oe,t),e,n);async function y_(t,e){let n=Tt(),o=await Mt(oe,t,e?crypto.randomUUID():t);if(!n())return!1;let i=String(o.now.name??t);return e&&v(o,{now:{...o.now,name:""}}),dc(o,"form",e?`A copy of ${i}`:`Change ${i}`),!0}async function v_({id:t,file:e,text:n}){let o=Tt(),i=e?await Mt(oe,e,t):Eo(oe,JSON.parse(n),t);return o()?(dc(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var it=()=>a.mould,z=()=>it().open.now;function Dt(t,e){vi(it(),t),Lt(it().open,M(z(),t,e))}var k_=()=>ha(it()),x_=()=>ga(it()),KT=["name","note","owned","unmould_after"];function cc(t){let e=z(),n=Object.keys({...t,...e}).filter(l=>t?.[l]!==e[l]);(!t||n.some(l=>!KT.includes(l)))&&v(it(),{is_old:!0});let i=n.some(l=>it().complaint?.field===`/${l}`),s=n.some(l=>!["name","note"].includes(l));(it().is_old||i||s)&&Ha()}function Ha(){clearTimeout(w_),w_=window.setTimeout(()=>{JT()},UT)}async function JT(){if(lc)return void(uc=!0);let{mould:t}=a;if(!t)return;let e=t.open.now;if(!(!Ie(e,"shape")&&!Ie(e,"mesh"))){if(vs(e).length)return v(t,{complaint:void 0});lc=!0;try{let n=oe.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Si(o);t.open.now===e&&v(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;t.open.now===e&&t===a.mould&&pc(n),n.may_pass&&window.setTimeout(Ha,zT)}finally{lc=!1,uc&&Ha(),uc=!1}}}function pc(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,l=e?`${n}; ${o}`:t.message;v(it(),{complaint:{field:ia(z(),e),line:l,keep:i&&{...i,at:ia(z(),i.at)},about:s===void 0?void 0:ia(z(),`${e}/${s}`)}})}var T_={};async function zs(t){Tt();let e=T_={name:t},n=a.view;if(a.order?.open.file!==t){a.order&&V(a.order.open)&&await ln(a.order.open);let o=await Mt(Bo,t);if(T_!==e)return;let i=V(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),V(o)&&Zn(o)}a.view===n&&f({view:"order",typed:void 0}),Ia()}function R_(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function S_(t){let e=Tt(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},o=Bo.new_name(Eo(Bo,n)),{file:i}=await xe({kind:Bo,name:o,text:st(n)});e()&&await zs(i)}var zt=()=>a.order,A_=()=>ha(zt()),D_=()=>ga(zt());var qa=t=>Object.values(a.formulas).includes(t),Mi=t=>Object.values(a.beside).includes(t),P_=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function VT(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&Ue(),P_(t)!==P_(e)&&ao(),rt(),Zn()}var QT=rt;function GT(t,e){for(let n of["pour","pipe"]){if(a.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(ce(e))?M(s,o,t.file):s;Td(a.run,i),i(a.run.now)!==a.run.now&&Lt(a.run,i(a.run.now))}}async function YT(t){t===a.run?(_i(),localStorage.removeItem("run"),f({view:"runs"})):t===a.mould?.open?cn():t===a.order?.open?R_():Mi(t)?_a(t):await g_(t),await Se(),a.run.file&&rt()}function O_(){Ne("edited",({file:t,before:e})=>{Vh(),t===a.run?VT(e,t.now):qa(t)||Mi(t)?QT():t===a.mould?.open?cc(e):t===a.order?.open&&Zn(t)}),Ne("gave_way",({file:t})=>{if(f({typed:void 0}),t===a.mould?.open)return cc();t!==a.order?.open&&(t===a.run&&(Ue(),ao().then(rt)),rt())}),Ne("left_deleted",({file:t})=>{YT(t)}),Ne("unwritten",({file:t})=>{t===a.run||t===a.order?.open?ln(t):(qa(t)||Mi(t))&&rt()}),Ne("conflict",({file:t})=>{(qa(t)||Mi(t))&&f({is_old:!0})}),Ne("renamed",({file:t})=>{Mi(t)&&a.held_open!==void 0&&f({held_open:t.file}),t===a.run&&(localStorage.setItem("run",t.file),Ue(),ao()),rt()}),Ne("copied",({file:t,from:e})=>{qa(t)&&GT(t,e),Mi(t)&&_g(t,e),a.held_open===e&&f({held_open:t.file}),t===a.run&&(Xh(e),Eg(e),localStorage.setItem("run",t.file),ki().then(rt))})}var he=r`<span aria-hidden="true">⚠</span> Danger`;function Ks(t,e="",n){let o=fo(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${he}</strong> ${i}</p>`)}
  </div>`:u}function fo(t,e){let n=t==="pour"?"pipe":"pour";return a.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function F_(){let t=ue(a.view)||a.view==="order"||a.view==="trail"||Ts()==="apart",e=a.dangers.run.map(({text:n})=>({from:t?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var M_=()=>F_().length>0;function L_(){let t=F_(),e=tR(),n=e||ue(a.view)?"":$d();return!t.length&&!e&&!n?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:o,text:i})=>r`<p class="danger"><strong>${he}</strong> ${o}${i}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${ZT()?r`<button type="button" @click=${XT}>To the question</button>`:u}
          </div>`:u}
    ${n?r`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:u}
  </section>`}var ZT=()=>Pn(Ts())!==void 0&&!ue(a.view);function XT(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function tR(){if(!a.run.file||a.view==="reading")return"";let t=Pn(Ts());if(t&&No(t))return`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(t)return`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let e=a.changed_beside;return a.is_old&&e.length?`${qt(e)} ${e.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var Wn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Ua=t=>(...e)=>({_$litDirective$:t,values:e}),Li=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:eR}=Gf,B_=t=>t;var W_=t=>t.strings===void 0,C_=()=>document.createComment(""),Bi=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(C_(),i),l=o.insertBefore(C_(),i);n=new eR(s,l,t,t.options)}else{let s=n._$AB.nextSibling,l=n._$AM,d=l!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==l._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=B_(c).nextSibling;B_(o).insertBefore(c,i),c=p}}}return n},ho=(t,e,n=t)=>(t._$AI(e,n),t),nR={},za=(t,e=nR)=>t._$AH=e,I_=t=>t._$AH,Ka=t=>{t._$AR(),t._$AA.remove()};var D=Ua(class extends Li{constructor(t){if(super(t),t.type!==Wn.PROPERTY&&t.type!==Wn.ATTRIBUTE&&t.type!==Wn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!W_(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===jt||e===u)return e;let n=t.element,o=t.name;if(t.type===Wn.PROPERTY){if(e===n[o])return jt}else if(t.type===Wn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return jt}else if(t.type===Wn.ATTRIBUTE&&n.getAttribute(o)===e+"")return jt;return za(t),e}});var Xt=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function In(t,e){let n=Xt(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>Xt(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Ja(t,e){let n=Xt(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}var Ci=28.349523125,H_=25.4,oR=29.5735295625;function Kt(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function R(t,e){return q_(Kt(t,e))}var q_=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function re(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${Kt(t,e)} %`:mc(t)?"just below 0 %":"0.0 %"}var mc=t=>t<0||Object.is(t,-0),U_=t=>Math.abs(t-Math.round(t))<1e-6;function E_(t){return t?[0,1,2,3].find(e=>U_(t*10**e))??3:0}function N_(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function iR(t){return[0,1,2].find(e=>t.every(n=>U_(n*10**e)))??3}function Vs(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function ht(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-iR([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var z_=.001;function Js(t,e,n,o,i=1e-9){let s=10**n;return Kt(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var j_=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function sR(t){if(!j_.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return j_.find(e=>Math.abs(e*Ci-t)<.6*z_)}function nt(t,e,n="nearest"){let o=e.scale_step_g||.1,i=sR(o),s=Math.min(.6*z_,o/2),l=i?Js(e.g,1,N_(o),n):Js(e.g,1,E_(o),n,s),d=i?Js(e.g,Ci,E_(i),n,s):Js(e.g,Ci,N_(o/Ci),n),[c,p]=[`${e.g_text??l} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Vs(t,c,p)}var H=(t,e,n=1,o="nearest")=>nt(t,{g:e,scale_step_g:10**-n},o);function De(t,{g:e=0,pieces:n}){if(n!==void 0)return`${n} ${n===1?"piece":"pieces"}`;let o=l=>q_(Js(e,l,3,"down")),i=16*Ci,s=e<1e3?`${o(1)} g`:`${o(1e3)} kg`;return A(Vs(t,s,e<i?`${o(Ci)} oz`:`${o(i)} lb`))}function yt(t,e,n=1){return Vs(t,`${Kt(e,n)} ml`,`${Kt(e/oR,2)} US fl oz`)}function gt(t,e){return Vs(t,`${R(e,1)} mm`,rR(e))}function rR(t){let e=Math.round(Math.abs(t)/H_*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),l=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",l].filter(Boolean).join(" ")} in`}var fc=([t])=>t,A=([t,e])=>e?`${t} (${e})`:t;function K_(t,e){return Vs(t,`${Kt(e,0)} \xB0C`,`${Kt(e*1.8+32,0)} \xB0F`)}function Ke(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??H_;return n*o}function Pe(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Rt=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function E(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Pt(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${E(t)}`}var J_=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),Ot=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,E);function Va(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function go(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function G_(t){let e=Ke(t.round?.radius);if(e)return V_(e,T`<circle class="plain" r=${e} />`);let n=aR(t);if(!n)return u;let o=Math.max(...n.map(([i,s])=>Math.hypot(i,s)));return o>0?V_(o,T`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var V_=(t,e)=>r`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function aR({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return lR(t);if(!Array.isArray(e))return;let n=e.map(o=>[Q_(o,"x"),-Q_(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function Q_(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(Ke(n.replace(/^-/,""))??NaN)}function lR({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[Ke(e),Ke(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(s,l)=>{let d=Math.PI*l/t,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var hc=!1;function Y_(t){let{plan:e,explanation:n}=a,o=n?.of!==e;return o&&!hc&&dR(),{workings:uR(n?.workings,t),complaint:n?.complaint,is_old:o}}function uR(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function dR(){let{plan:t,planned:e}=a;if(!(!t||!e)){hc=!0;try{let{how:n}=await ff(e);f({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{hc=!1}}}var Z_=T`<path class="wall" d="M30 10l8 52h44l8-52" />`,gc={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:T`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Z_}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:T`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:T`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Z_}<path class="measure" d="M20 10h80" />`}};var _c=t=>`term ${t}`;function En(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(_c(t))?"true":"false"}
    aria-label="What ${gc[t].name} means"
    @click=${()=>Ct("open",_c(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Je(t){if(!a.open.has(_c(t)))return u;let{name:e,words:n,drawing:o}=gc[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var _o=t=>r`<span class="term">${En(t)}${Je(t)}</span>`;function C({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:l,term:d}){let c=a.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ct("open",t)}
    >
      <span class="name">${e}${l?r`<small>${l}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${En(d)}${Je(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?Qa(i):$c(o)}</div>`:u}
  </div>`}var Qo=(t,e,n)=>C({key:t,label:e,shown:["",""],of:n});function $c(t){let{workings:e,complaint:n,is_old:o}=Y_(t);return e.length?r`<div class=${o?"old":""}>${e.map(Qa)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Qa({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
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
    ${l?r`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var Go,Qs=[],Nn=()=>Go!==void 0;function ge(t,e,n,o){if(!Go||Go.some(s=>s.id===n))return;let i=Qs.flatMap(({part:s})=>s??[]);Go.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:Qs.flatMap(({fold:s})=>s??[])})}function Oe(t,e){Qs.push(t);try{return e()}finally{Qs.pop()}}var X_=()=>{},t$=t=>{X_=t},Ga,cR=()=>[a.run.now,...Object.values(a.formulas).map(t=>t.now),...Object.values(a.beside).map(t=>t.now),a.formulas.apart,a.plan,a.fats,a.files];function Wi(){if(Nn())return[];let t=cR();return Ga?.of.length===t.length&&t.every((n,o)=>n===Ga.of[o])||(Ga={of:t,wanted:pR()}),Ga.wanted}function pR(){Go=[],Qs=[];try{return X_(),Go}finally{Go=void 0}}function e$(t){a.touched.has(t)||f({touched:new Set(a.touched).add(t)})}function n$(t,e){if(a.has_asked)return!1;let n=Wi().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var Q=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Ya(t){if(t==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let e=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??e(a.quoted,a.quoted?.of)??e(a.run_days,a.run_days?.of[0])}function Jt(t,e){let n=Ya(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return Fe(t)&&!n$(t,n.field)?L(n):void 0}function St(t,e){return Ya(t)?.field===e?Jt(t,e):void 0}function Fe(t){let e=Ya(t),n=io(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function mR(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function pn(){let t=Ya();if(t)for(let e of["run",...mt,...xt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Jt(e,n)&&document.getElementById(Q(e,n));if(o)return o}}function fR(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=hR(t,n);return o&&Rt(e)?`${e.trim()} ${o}`:e}function hR(t,e){return Pe(g(e,t.at))||t.unit||""}var _t=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,bc=!1;addEventListener("pointerdown",()=>bc=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>bc=!1,!0);var gR=()=>f({typed:void 0});function Yo(t){let{id:e}=t.target,n=()=>{gR(),e$(e)};bc?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var _R=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,$R=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function h(t){let e=t.of??"run",n=Q(e,t.at),o=g(e,t.at),i=_R(o),s=a.typed?.key===n,l=s?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!t.optional||t.is_due===!0);d&&ge(e,t.at,n,t.label);let c=Jt(e,t.at),p=b=>{let y=b.target.value;f({typed:{key:n,text:y}});let x=fR(t,y);X(e,x===void 0&&t.takes_part?mR(e,t.at):t.at,x)},_=(s&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${wc(r`<label for=${n} data-said=${$R(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${D(l)}
      @input=${p}
      @blur=${Yo}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${_t(n,c,_)} ${t.term?Je(t.term):u}
  </div>`}var wc=(t,e)=>e?r`<div class="labelled">${t}${En(e)}</div>`:t;function te(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var B=t=>()=>document.getElementById(t),ot=(t,e)=>B(Q(t,e)),Ve=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),bR=()=>document.activeElement;function W(t){requestAnimationFrame(()=>te(t()))}function _e(t,e,n,o=bR){P(e),hg(t,n),W(o)}function q(t,e,n,o,i){_e(t,e,s=>M(s,n,o),i)}var Me=(t,e,n)=>`${Q(t,e)}-${n}`;function N(t,e){let n=St(t,e);return n?r`<p id=${Q(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var o$=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function dt(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${o$(e,n,o)}</div>`}function S({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let b=i?Me(t,n,e.replaceAll(/\W+/g,"-")):Q(t,o),y=s===void 0&&!m;y&&ge(t,o,b,e);let x=i?void 0:St(t,o),G=Et=>{if(Et===s)return;let Ao=l.find(([tx])=>tx===Et)[1];q(t,`${e}: ${Ao}`,n,d(Et),c&&ot(t,c(Et)))};return r`<div class="field asked ${x?"wants":""}">
    ${wc(r`<p class="question" id="${b}-label" data-said=${y?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${x||p?`${b}-said`:u}
    >
      ${o$(s,l,G)}
    </div>
    ${_t(b,x,p)} ${_?Je(_):u}
  </div>`}function yc(t,e,n,o){let i=Q("run",t),s=St("run",t),l=()=>q("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${l}
      >
        ${e}
      </button>
    </div>
    ${_t(i,s)}`}function vt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:l,take:d}){let c=Q(e,n),p=Jt(e,n),m=l??O(e,n);!m&&!s&&ge(e,n,c,t);let _=!m||o.some(([x])=>x===m),b=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${x=>{let G=x.target.value;d?d(G):X(e,n,G||!s?G:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${b.filter(([x])=>x||s||!m).map(([x,G])=>r`<option value=${x} .selected=${D(x===m)}>${G}</option>`)}</select
    >${_t(c,p)}
  </div>`}function Ii(t,e,n=[]){let o=ie(O("run",e),n);return vt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function ee({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:l}){let d=Me(t,e,"part"),c=Me(t,e,"add"),p=()=>Oe({part:o},l);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>q(t,`${o} added`,e,s,Ve(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>q(t,`${o} removed`,e,void 0,B(c))}
      >
        Remove
      </button>
    </div>
    ${N(t,e)} ${p()}
  </div>`}var i$=(t,e)=>`folded ${t} ${e}`,Vt=(t,e)=>ut(i$(t,e));function F({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let l=i$(t,e);if(Nn())return r`${Oe({fold:l},s)}`;(i||n.some(p=>Jt(t,p)))&&ut(l);let d=a.open.has(l);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),Ct("open",l)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var k=({of:t="run",at:e})=>tt(t,e),I=({of:t="run",at:e},n)=>Me(t,`${e}/${n}`,"item"),Za=({of:t="run",at:e},n,o)=>Me(t,`${e}/${n}`,o),wR=({of:t="run",at:e})=>Q(t,e);function Gs(t,e,n,o){let{of:i="run",at:s,stays:l,and:d=c=>c}=t;_e(i,e,c=>d(M(c,s,n.length||l?n:void 0),n.length),o)}function U(t,e,n){let o=k(t);Gs(t,`${n} added`,[...o,e],Ve(I(t,o.length)))}function yR(t,e,n){let o=k(t).filter((l,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);Gs(t,`${n} removed`,o,s?B(Za(t,i,"drop")):ot(t.of??"run",t.at))}function vR(t,e,n,o){let i=[...k(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let l=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":l;Gs(t,`${o} moved ${l}`,i,B(Za(t,e+n,c)))}function K(t,e,n){let o=k(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let l=(d,c,p)=>r`<button
      type="button"
      id=${Za(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>vR(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${l(-1,"earlier",e===0)} ${l(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Za(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>yR(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Z(t,e,n){let o=wR(t),i=St(t.of??"run",t.at);return r`${_t(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var at=()=>a.beside.studio!==void 0,Ys=({run:t})=>g("run",t),vc=({studio:t})=>g("studio",t);function Zs(t){return Ys(t)===void 0&&at()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var mn=t=>Ys(t)??vc(t),Wt=(t,e)=>h({...e,...Zs(t)}),kc=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function Xs(t,e=""){return t===void 0||kc(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>Xs(o,`${e}/${j(n)}`))}function jn(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&kc($(t,n))&&(t=M(t,n,void 0));return t}var Ei=(t,e)=>e.reduce((n,o)=>jn(M(n,o,void 0),o),t);function r$(t){let e=new Map;return t.flatMap(n=>Xs(Ys(n)).flatMap(([o,i])=>{let s=n.studio+o,l=e.get(s)??g("studio",s);return kc(l)||String(l).startsWith("?")||l===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function xc(t){at()||await $a();let e=r$(t);qe([["studio",n=>e.reduce((o,[,i,s])=>M(o,i,s),n)],["run",n=>Ei(n,e.map(([o])=>o))]]),P("Kept in the studio")}function kR(t){let e=t.flatMap(o=>Xs(vc(o)).map(([i,s])=>[o.run+i,s]));qe([["run",o=>e.reduce((i,[s,l])=>$(i,s)===void 0?M(i,s,l):i,o)]]),P("Said in this run only")}function xR(t){let e=t.flatMap(n=>Xs(Ys(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));qe([["run",n=>Ei(n,e)]]),P("Taken from the studio again")}var s$=t=>Xs(t).length>0;function $o(t,e){if(!at())return u;let n=e.some(s=>s$(Ys(s))),o=e.some(s=>s$(vc(s))),i=(s,l)=>r`<button type="button" aria-label="${t}: ${s}" @click=${l}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&r$(e).length?i("Keep in my studio",()=>{xc(e)}):u}
    ${n&&o?i("As in the studio",()=>xR(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>kR(e)):u}
  </span>`}function Tc(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return e.find(o=>ie(o,n)===ie(t,n))??t}var pt=(t,e)=>Object.keys(g(t,e)??{}),a$=(t,e)=>`${Q(t,e)}-name`;function Ni({of:t,at:e,label:n,add:o,blank:i,then:s}){let l=a$(t,e),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",pt(t,e).includes(p))return te(s(p)());q(t,`${p} added`,`${e}/${j(p)}`,i,s(p))};return r`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function tr({of:t,at:e,name:n,label:o,also:i=l=>l,put:s}){let l=`${Q(t,e)}-${pt(t,e).indexOf(n)}-called`;return Sc({id:l,name:n,label:o,taken:pt(t,e),take:d=>{let c=p=>i(er(p,e,n,d),d);s?s(c,d):_e(t,`${n} is called ${d}`,c)}})}var Rc;function Sc({id:t,name:e,label:n,taken:o,take:i,hint:s}){let l=c=>{let p=c.target.value.trim(),m=p!==e&&o.includes(p);Rc=m?{id:t,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===e)&&(i(p),P(`${e} is called ${p}`),W(B(t)))},d=Rc?.id===t?Rc.words:void 0;return r`<div class="field ${d?"wants":""}">
    <label for=${t}>${n}</label>
    <input
      id=${t}
      .value=${D(a.typed?.key===t?a.typed.text:e)}
      @input=${c=>f({typed:{key:t,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||s?`${t}-said`:u}
    />
    ${_t(t,d,s)}
  </div>`}function er(t,e,n,o){let i=Object.entries($(t,e)??{}).map(([s,l])=>[s===n?o:s,l]);return M(t,e,Object.fromEntries(i))}function Zo(t,e,n,o=n){let i=s=>jn(M(s,`${e}/${j(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>_e(t,`${o} removed`,i,B(a$(t,e)))}
    >
      ×
    </button>
  </div>`}var Xo="/pipe/beads",Ge=`${Xo}/tip`,TR={of:"run",at:Ge},fn={at:`${Xo}/moves`,in_order:!0},Ac="\0own",c$={tip:"",bead_to_opening:"",moves:[]},Qe=(t,e)=>({name:t,label:e,kind:"length"}),l$={name:"count",label:"How many",kind:"count"},u$=Qe("circle_radius","Radius of their circle"),Dc={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Qe("diameter","Diameter"),Qe("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Qe("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Qe("start_radius","Radius at the start"),Qe("end_radius","Radius at the end"),Qe("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Qe("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[l$,u$,Qe("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[l$,u$,Qe("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Qe("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function p$(t){return r`${SR()} ${Pc()?tl(TR):FR()}
    ${h({label:"Bead \xF7 tip opening",at:`${Xo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(fn).map((e,n)=>ER(e,n,t))}</div>
    ${HR()}`}var Pc=()=>typeof g("run",Ge)=="object",Oc=()=>String(g("run",`${Xo}/own_tips`)??g("studio","/own_tips")??"");function RR(){let t=Oc(),e=t?oc(t):[];return g("run",`${Xo}/own_tips`)===void 0?[...e,...Hs()]:e}function SR(){let t=n=>n===Ac?q("run","a tip of your own",Ge,{name:"",round:{radius:""}},DR):X("run",Ge,n),e=RR().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${vt({label:"Tip",at:Ge,answers:[...e,[Ac,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Pc()?Ac:void 0})}
  ${Pc()?u:F({name:"tips",pointers:[`${Xo}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${Xo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var AR=Me("run",Ge,"own"),DR=Ve(AR);async function PR(){let t=g("run",Ge);if(!await Pd())return;let e=tt("own_tips","/tips"),n=OR(String(t.name).trim()||"My tip",e);qe([["own_tips",o=>M(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>M(o,Ge,n)]]),P(`${n} kept in ${a.beside.own_tips.file}`)}function OR(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...Hs()].some(i=>i.name===o))return o}}function FR(){let t=O("run",Ge),e=Oc();if(!t||!e||!oc(e).some(o=>o.name===t))return u;let n=tt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{Pd()}}>Change this tip of my own</button>`:tl({of:"own_tips",at:`/tips/${n}`})}var d$=[["round","Round"],["star","Star"],["outline","Another outline"]],Xa={x:"",y:""},MR={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Xa,Xa,Xa]};function tl({of:t,at:e}){let n=d$.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...ft(t,e,n),[s]:MR[s]});return r`<div class="part" id=${Me(t,e,"own")} role="group" aria-label="My own tip">
    ${N(t,e)} ${LR({of:t,at:e})}
    ${S({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:d$,puts:i})}
    ${o?WR({of:t,at:e},o):u}
    ${F({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>CR({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{PR()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var LR=({of:t,at:e})=>t==="run"?h({label:"What you call the tip",at:`${e}/name`}):Sc({id:Q(t,`${e}/name`),name:O(t,`${e}/name`),label:"What you call the tip",taken:tt("own_tips","/tips").map(({name:n})=>String(n)),take:n=>BR(e,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function BR(t,e){let n=O("own_tips",`${t}/name`),o="/hand",i=He(Oc())===a.beside.own_tips?.file,s=i&&g("run",Ge)===n,l=i&&g("studio",`${o}/${j(n)}`)!==void 0;qe([["own_tips",d=>M(d,`${t}/name`,e)],...s?[["run",d=>M(d,Ge,e)]]:[],...l?[["studio",d=>er(d,o,n,e)]]:[]])}function CR({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${h({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button
            type="button"
            @click=${()=>q(t,"correction removed",n,void 0,Ve(Me(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${h({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function WR(t,e){if(e==="outline")return IR(t);let{of:n,at:o}=t,i=(s,l)=>h({of:n,label:l,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function IR({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>r`<div class="row" id=${I(n,i)}>
          ${h({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${K(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Z(n,"One more corner",()=>U(n,Xa,"corner"))}`}function ER(t,e,n){let o=Dc[String(t.move)],i=`${fn.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${I(fn,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${K(fn,e,s)}
    </div>
    ${N("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>NR(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${jR(e,n)}
  </div>`}function NR(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${t}/${e}`,unit:l,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function jR(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==k(fn).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return C({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:yt(a.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function HR(){let t=o=>({move:o,...Object.fromEntries(Dc[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=Q("run",fn.at),n=St("run",fn.at);return k(fn).length||ge("run",fn.at,e,"What the tip does"),r`${_t(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Dc).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>U(fn,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function hn(t,e=()=>{}){if(!t.theirs)return u;let n=No(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{Fh(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>Mh(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>Oh(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function gn(t){if(t.theirs||!t.set_aside||yi(t)&&!t.is_taken)return u;let e=()=>{yi(t)&&Uo(),Lh(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>Dh(t)}>Close</button>`:u}
    </div>
  </section>`}var el={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function f$(t,e){let n=Ns(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=tt("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&a.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{qR(t,e)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return F({of:"own_fats",name:e,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>Oe({part:O("own_fats",`${l}/name`)||"Your own fat"},()=>Fc(l))})}async function qR(t,e){await ba(t),Vt("own_fats",e);let n=tt("own_fats","/fats").findIndex(o=>o.id===e);W(B(`f-own_fats-fats-${n}-name`))}var UR=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Fc(t){let e=(n,o,i,s=!1)=>h({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${N("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${S({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:O("own_fats",`${t}/kind`)||void 0,answers:UR,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${zR(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${F({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>KR(t)})}`}function zR(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,l=!1)=>h({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return r`${S({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function KR(t){let e=(o,i,s,l)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>q("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${N("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,s,l=!1)=>h({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:l,short:!0});return r`<div class="items">
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
    ${JR(`${t}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var m$=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function JR(t){let e=Object.keys(g("own_fats",t)??{}),n=m$.filter(([l])=>!e.includes(l)),o=l=>m$.find(([d])=>d===l)?.[1]??l,i=l=>`${t}/${j(l)}`,s=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>q("own_fats",`${o(l)} removed`,e.length>1?i(l):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${N("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${vt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&q("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function ji(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:t}}var J=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,VR=t=>t.cut?["loaf","loaves"]:["cast","casts"];function Ye(t,{pieces:e,casts:n}){let o=t.cut?J(e,"bar"):J(e,"piece");return n===e?o:`${o} from ${J(n,...VR(t))}`}var QR=t=>t===1?"once":`${t} times`,Mc=t=>t.batches.length>1,Qt=t=>t.pieces.batches>1;function $t(t){return Qt(t.whole)?`one batch, ${Ye(t.whole,t.batch)}`:""}var h$=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function Lc(t,e){return h$(t)?`${Ye(t.whole,e)}${e.count>1?`, whipped ${QR(e.count)}`:""}`:""}function nl(t,e){let n=Lc(t,e);return n&&`one whipping: ${n}`}var g$=t=>Qt(t.whole)||h$(t),ol=(t,e)=>`${J(t,"filling")} of ${J(e,"cavity","cavities")}`;var _$=t=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(e=>e.file===t)?.name||t;function il(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${qt(e.map(_$))}.</p>`:u}function Hi(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${qt(e.map(_$))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var nr={of:"own_fats",at:"/fats",least:1},sl={of:"own_tips",at:"/tips",least:1},ti=({of:t,at:e})=>tt(t,e);function $$(t){return w$(t,nr,"fats",e=>{let n=`/fats/${e}`;return F({of:"own_fats",name:String(ti(nr)[e].id),pointers:[n],summary:r`<span
        >${O("own_fats",`${n}/name`)||"Without a name"}<small
          >${GR(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Fc(n)})})}function GR(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function b$(t){return w$(t,sl,"tips",e=>{let n=`/tips/${e}`;return r`<div class="tip-row">
      ${G_(ti(sl)[e])}
      ${F({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:O("own_tips",`${n}/name`)||"Without a name",body:()=>tl({of:"own_tips",at:n})})}
    </div>`})}function w$(t,e,n,o){let i=a.files?.[n].find(({file:l})=>l===t.file),s=l=>String(ti(e)[l].name||`number ${l+1}`);return r`${hn(t)} ${gn(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${Hi(i)}
      ${t.shipped?r`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${ti(e).map((l,d)=>r`<div class="held" id=${I(e,d)} role="group" aria-label=${s(d)}>
              ${o(d)} ${K(e,d,s(d))}
            </div>`)}
      </div>
    </section>`}var Bc=(t,e)=>({...el,id:Ja(t,e),name:t});function y$(t){let e=Bc(t,[...a.fats,...ti(nr)]);U(nr,e,t),Vt("own_fats",String(e.id)),W(ot("own_fats",`/fats/${ti(nr).length-1}/source`))}var Cc=t=>({name:t});function v$(t){U(sl,Cc(t),t);let e=ti(sl).length-1;Vt("own_tips",`tip ${e}`),W(Ve(Me("own_tips",`/tips/${e}`,"own")))}var k$=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},rl=Ua(class extends Li{constructor(t){if(super(t),t.type!==Wn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],l=0;for(let d of t)i[l]=o?o(d,l):l,s[l]=n(d,l),l++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=I_(t),{values:s,keys:l}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=l,s;let d=this.ut??=[],c=[],p,m,_=0,b=i.length-1,y=0,x=s.length-1;for(;_<=b&&y<=x;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(d[_]===l[y])c[y]=ho(i[_],s[y]),_++,y++;else if(d[b]===l[x])c[x]=ho(i[b],s[x]),b--,x--;else if(d[_]===l[x])c[x]=ho(i[_],s[x]),Bi(t,c[x+1],i[_]),_++,x--;else if(d[b]===l[y])c[y]=ho(i[b],s[y]),Bi(t,i[_],i[b]),b--,y++;else if(p===void 0&&(p=k$(l,y,x),m=k$(d,_,b)),p.has(d[_]))if(p.has(d[b])){let G=m.get(l[y]),Et=G!==void 0?i[G]:null;if(Et===null){let Ao=Bi(t,i[_]);ho(Ao,s[y]),c[y]=Ao}else c[y]=ho(Et,s[y]),Bi(t,i[_],Et),i[G]=null;y++}else Ka(i[b]),b--;else Ka(i[_]),_++;for(;y<=x;){let G=Bi(t,c[x+1]);ho(G,s[y]),c[y++]=G}for(;_<=b;){let G=i[_++];G!==null&&Ka(G)}return this.ut=l,za(t,c),jt}});async function ct(t){f({list_complaint:""});try{await t()}catch(e){f({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof w&&await Se().catch(()=>{})}}var Wc=()=>{ct(bg)},x$=()=>{ct(wg)};function Le(t){return r`<h1 tabindex="-1">${t}</h1>
    ${a.list_complaint?r`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Ls()?r`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Wc}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var T$=new Map,R$=Promise.resolve();function S$(t,e=""){let n=`${t}
${e}`,o=T$.get(n);return o||(o=R$.then(()=>YR(t)),R$=o,T$.set(n,o)),o}async function YR(t){try{let e=await on({kind:"glb",gauge:{file:t}}),n=Ri(await e.arrayBuffer());return Cs(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof w)return;throw e}}var Ic=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{S$(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void ke(u,this);let{left:n,right:o,floor:i,brim:s,loops:l}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];ke(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Bs(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Ic);var Ze=(t,e)=>r`<ul class="cards">
    ${rl(t,({file:n})=>n,e)}
  </ul>`;function _n(t){let{one:e,facts:n,picture:o,open:i}=t,s=a.list_open?.file===e.file?a.list_open:void 0,l=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{ct(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>ZR(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?XR(t,s):u}
  </li>`}function ZR({one:t},e){let{file:n,name:o,note:i}=t;f({list_open:e?{file:n,name:o,note:i,stem:Ti(n)}:void 0})}function XR(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{ct(()=>e0(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&Ti(o.file)===e.stem,l=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{ct(()=>n0(t,e))};return r`<div class="acts">
    ${il(o)} ${n.called?Ec(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Ec("Note",e,"note")} ${Ec("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${s||!l||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{ct(()=>A$(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?t0(o,e):u}
  </div>`}function Ec(t,e,n){let o=`list-${n}`,i=s=>v(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${D(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function t0(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{ct(()=>A$(t,e,!0))}}>Remove it even so</button>
  </div>`}async function e0(t,e){let n=await yg(t,e),o=a.files?.[t.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:Ti(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function n0({kind:t,one:e},{name:n,note:o,stem:i}){await kg(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function A$(t,e,n){let o=t.used_by??[];if(o.length&&!n)return v(e,{used_by:o});try{await xg(t,n),f({list_open:void 0})}catch(i){let s=i instanceof w?i.answer.used_by:void 0;if(!s)throw i;v(e,{used_by:s})}}function al(t,e,n){let o=[...a.files?.[t.list]??[]].sort((s,l)=>Number(s.shipped)-Number(l.shipped));return o.length?Ze(o,s=>_n({kind:t,one:s,facts:o0(s),open:()=>n(s.file)})):r`<p class="aside">None yet. ${e}</p>`}var D$=4;function o0({holds:t=[],changed:e}){let n=t.length-D$,o=n>0?[...t.slice(0,D$),`${n} more`]:t;return[o.length?qt(o):"",e?`changed ${E(e)}`:""].filter(Boolean)}var or="";function ll({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(or.trim()),or="",Y()})},s=l=>{or=l.target.value,Y()};return r`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${D(or)} @input=${s} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!or.trim()} @click=${i}>${e}</button>
  </div>`}function Be(t){let e=a.removed.filter(n=>n.kind===t);return e.length?r`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(i0)}
    </ul>
  </details>`:u}function i0(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=a.open.has(n);return r`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${E(t.removed_at)}, kept until ${E(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{ct(()=>Tg(t))}}>
        Bring back
      </button>
      ${o?r`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{ct(()=>Rg(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>Ct("open",n)}>Keep it</button>`:r`<button type="button" aria-label="Delete ${e} ..." @click=${()=>Ct("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function O$(){let t=ro();return r`${Le("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${al(rn,"Each file is named by the formulas that use its fats.",e=>Ms(rn,e))}
      ${t?$$(t):u}
      ${ll({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(y$(e)):wa(rn,Bc(e,a.fats)),tried:ct})}
    </section>
    ${s0()} ${Be("fats")}`}var P$="fats that are listed";function s0(){let t=a.finding?.key===P$?a.finding.text:"",e=a.fats.filter(n=>In(n,t)!==void 0);return r`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${D(t)}
          @input=${n=>f({finding:{key:P$,text:n.target.value}})}
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
          ${e.map(n=>r0(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:r`<p class="hint">None is called so.</p>`}
  </section>`}function r0(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,s=In(t,e),l=d=>R(d,1);return r`<tr>
    <th scope="row">${t.name}${s&&s!==t.name?r` <small>${s}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var F$=t=>t.goes_into==="lye",M$=({role:t})=>t==="alkali",a0=t=>M$(t)?"down":"nearest",ei=(t,e)=>nt(t,e,a0(e));function ul(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>F$(i)),n=({one:i})=>i.role==="water",o=({one:i})=>M$(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function L$(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!F$(e))}function Nc(t){let e=O(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${c0(t)}
    ${F({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var l0=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],B$={after:"",mass:""},C$=3,u0={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:C$},()=>B$)}}};function d0(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function c0(t){let e=d0(t);return r`${S({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:l0,puts:o=>({...ft(t,"",["drying","water_lost_in_cure"]),...u0[o]})})}
  ${e==="share"?r`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?p0(t):u}`}function p0(t){let e={of:t,at:"/drying/weighings",least:C$};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(e).map((n,o)=>r`<div class="row named" id=${I(e,o)}>
          ${h({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${K(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Z(e,"One more weighing",()=>U(e,B$,"weighing"))}`}var m0=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],dl=t=>mo(t).map(e=>[e.id,e.name]),W$=["unsaid","Not given"],I$=["none","Holds none"],E$=t=>t===void 0?"unsaid":t==="none"?"none":"some",f0=t=>e=>e==="some"?t:e==="none"?"none":void 0;function N$(t,e){return jc(t,`${e}/contains_fat`,[W$,I$,["some","Holds fat"]],dl(t))}function jc(t,e,n,o){let i=E$(g(t,e)),s=n.some(([l])=>l===i)?i:void 0;return r`${S({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:f0({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${vt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var h0=[W$,I$,["some","Holds acid"],["typed","By what it takes up"]],g0={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Hc(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":E$(g(t,n));return r`${S({of:t,question:"Acid in it",at:n,chosen:o,answers:h0,puts:i=>g0[i]})}
  ${o==="some"?r`<div class="row">
          ${vt({label:"Which acid",of:t,at:`${n}/acid`,answers:m0.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?qc(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function qc(t,e,n){let o=g(t,e)===!0?"yes":"no";return S({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var _0=["tsp/lb","tbsp/lb","tsp/kg"],cl=["%","g/kg",..._0].flatMap(t=>[`${t} of fats`,`${t} of batter`]),H$=[...cl,"% of finished soap","g/kg of finished soap"];function j$(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function pl(t,e,n,o,i=!1){let s=Q(t,e),[l,d]=j$(O(t,e),o),c=a.typed?.key===s?a.typed.text:l;!i&&!(l.trim()&&d)&&ge(t,e,s,l.trim()?`${n}: of what`:n);let m=Jt(t,e),_=(y,x)=>{let G=`${y.trim()} ${x}`.trim();X(t,e,i&&!y.trim()?void 0:G),Y()},b=y=>{let x=y.target.value,[G,Et]=j$(x,o);f({typed:{key:s,text:x}}),_(G,Et||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${D(c)}
        @input=${b}
        @blur=${Yo}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${y=>_(c,y.target.value)}
      >
        <option value="" .selected=${D(d==="")}>of what?</option>
        ${o.map(y=>r`<option value=${y} .selected=${D(y===d)}>${y}</option>`)}
      </select>
    </div>
    ${_t(s,m)}
  </div>`}function $0(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var b0=.01+1e-9;function qi(t,e){let{sum:n,unread:o}=$0(e),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=b0?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var q$=(t,e)=>mo(t).find(n=>n.id===e)?.name??e,ir=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),ml=t=>k(ir(t));function Kc(t){let e=ml(t),n=a.picking?.of===t&&a.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>w0(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?qi("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:ge(t,"/fats",Q(t,"/fats"),"The fats")}
    ${n?z$(t):Z(ir(t),"Add a fat",()=>U$(t,e.length))} ${A0(t)}
  </section>`}function w0(t,e,n){let o=`/fats/${e}`,i=q$(t,String(n[e].fat??""))||"Which fat?",s=St(t,`${o}/fat`)??St(t,o),l=a.picking?.of===t&&a.picking.row===e;return r`<li class="formula-row" id=${I(ir(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${Q(t,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Uc():U$(t,e)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${K(ir(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${l?z$(t):u}
    ${f$(t,String(n[e].fat??""))}
    ${F({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${k0(n[e])}`,body:()=>R0(t,e)})}
  </li>`}function U$(t,e){f({picking:{of:t,row:e,text:""}}),W(B("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Uc(){let t=a.picking;f({picking:void 0}),t&&W(ot(t.of,t.row<ml(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function zc(t,e){let{row:n}=a.picking,o=ml(t);f({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};Gs(ir(t),`${q$(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ot(t,`/fats/${n}/share`))}function z$(t){let{row:e,text:n}=a.picking,o=ml(t).map(m=>m.fat),i=y0(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),l=s.find(m=>m.id===a.picking.lit),d=m=>{f({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=l?s.indexOf(l)+m:m>0?0:s.length-1,b=s[(_+s.length)%s.length];b&&(f({picking:{of:t,row:e,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Uc(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(y=>Xt(y.name)===Xt(n.trim())),b=l??(s.length===1?s[0]:_);m.key==="Enter"&&b&&zc(t,b.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Uc}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${a.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":"The list of fats is on its way ..."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,b=In(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[e]===m.id?"true":"false"}
          @click=${()=>zc(t,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{v0(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function y0(t,e){let n=mo(t).filter(l=>In(l,e)!==void 0),o=e.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>In(l,d)!==void 0).length,s=Math.max(...mo(t).map(i));return s?mo(t).filter(l=>i(l)===s):[]}async function v0(t,e){if(!await ba(t))return;let o=e.trim(),i=Ja(o,[...a.fats,...tt("own_fats","/fats")]),s=tt("own_fats","/fats").length;X("own_fats",`/fats/${s}`,{...el,id:i,name:o}),zc(t,i),Vt("own_fats",i),W(ot("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function k0(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var x0=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],T0={published:void 0,one:"",range:{low:"",typical:"",high:""}};function R0(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,l=(d,c)=>h({label:d,of:t,at:c,number:!0,short:!0});return r` ${h({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${S({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:x0,puts:d=>T0[d],hint:S0(t,O(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?qc(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function S0(t,e){let n=mo(t).find(l=>l.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function A0(t){let e=Ns(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=O(t,"/own_fats");return F({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var D0=t=>mt.includes(t);function fl(){let t=a.complaint;return!t?.field||t.lye_heavy?!1:Wi().some(({of:e,at:n})=>Fe(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function sr(){let t=a.complaint?Wi():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>P0(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function P0({of:t,id:e,folds:n}){for(let o of n)ut(o);f({has_asked:!0}),D0(t)?(a.view!=="formula"||a.formula_of!==t)&&se(t):a.view!=="set-up"&&!(t==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>W(B(e)))}var K$="danger-of-superfat";function Jc(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:fo(t).length?K$:void 0})}
    </div>
    ${Ks(t,K$)} ${O0(t)} ${W0(t,e)}
  </section>`}function O0(t){let e=tt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${S({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>F0(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>M0(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${qi("The two",e.map(i=>i.share))}
        </p>`:u}`}function F0(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function M0(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),l=St(t,i)??St(t,`${i}/alkali`);return r`<div class="formula-row">
    ${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?h({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${F({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${L0(e.purity_range)}`,body:()=>B0(t,i)})}
  </div>`}var L0=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function B0(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${S({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${h({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var C0={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function W0(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(C0);return r`${S({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:E0(e)})}
    <div class="row">${n.map(s=>I0(t,s))}</div>`}function I0(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function E0(t){if(!(!t||a.is_old))return`It now makes a strength of ${R(t.lye_strength_percent,1)} %; ${R(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(t.water_percent_of_fats,1)} % of the fats.`}function bo(t,e,n){let o=N0(t,e);return F({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${H0(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${J$(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>q0(t,i,s))}
        ${h({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function N0(t,e){let n=tt(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Vc={name:"",share:""},j0={unsaid:void 0,one:"",many:[Vc]};function H0(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=l=>l==="many"&&o?[{...Vc,name:o}]:j0[l];return r`${S({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?h({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${J$(t,e,"INCI name","One more INCI name")}`:u}`}function q0(t,e,n){return S({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function J$(t,e,n,o,i){let s={of:t,at:e};return r`${k(s).map((l,d)=>r`<div class="row named" id=${I(s,d)}>
        ${h({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${h({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${K(s,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${Z(s,o,()=>U(s,Vc,n))}`}var U0=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:eS},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Q0},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:G0},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:Y0}];function Qc(t){return U0.map(e=>{let n={of:t,at:`/${e.list}`},o=k(n),i=(s,l)=>r`<li class="formula-row" id=${I(n,l)}>
        ${K0(t,e,n,s,l)} ${e.row(t,`${n.at}/${l}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Z(n,e.add,()=>U(n,z0(e),e.add.replace("Add ","")))}
    </section>`})}function z0(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function K0(t,e,n,o,i){let s=`/${e.list}/${i}`,l=St(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:pl(t,`${s}/rate`,"How much",cl)}
      ${K(n,i,d)}
    </div>`}function V$(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return S({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function Q$(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${V$(t,e,V0,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?S({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:J0,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var J0=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],V0=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Gc(t,e,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(l=>`${e}/${l}`);return F({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${pl(t,`${e}/limit`,"The most that the supplier's document allows",H$,!0)}`})}function Yc(t,e,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return F({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${N$(t,e)} ${o?Hc(t,e):u}`})}var hl=(t,e,n)=>bo(t,e,String(n.name||"it"));function Q0(t,e,n){return r`${Q$(t,e,!0)}
    <div class="folds">${Yc(t,e,n,!0)} ${Gc(t,e,n)} ${hl(t,e,n)}</div>`}function G$(t,e,n){return F({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Q$(t,e,!1)})}function G0(t,e,n){return r`<div class="folds">
    ${Gc(t,e,n)} ${hl(t,e,n)} ${G$(t,e,n)} ${Yc(t,e,n,!1)}
  </div>`}function Y0(t,e,n){return r`${X0(t,e)}
    <div class="folds">
      ${Gc(t,e,n)} ${hl(t,e,n)} ${G$(t,e,n)} ${Yc(t,e,n,!0)}
    </div>`}var Z0=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function X0(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${S({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${vt({label:"Which oil",of:t,at:`${n}/fat`,answers:dl(t),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${S({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:Z0,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var tS=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function eS(t,e,n){let o=(i,s,l)=>F({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:l});return r`${oS(t,e,n)}
    ${V$(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${sS(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>nS(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Hc(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${hl(t,e,n)}
    </div>`}function nS(t,e){let n=g(t,e)===!0?"ice":"liquid";return S({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function oS(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...ft(t,e,["replaces","rate"]),[s]:""});return r`${S({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:iS,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${h({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?pl(t,`${e}/rate`,"Rate",cl):u}`}var iS=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function sS(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>h({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${S({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${jc(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...dl(t)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${vt({label:"Built-in figures of",of:t,at:n,answers:tS.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var rr=()=>Object.keys(g("studio","/cups")??{}),ar=()=>rr().length===1?{net:""}:rr().length?{cup:"",net:""}:{holds:"",net:""},Y$="\0another";function lr(t,e="Cup holds"){let n=`${t}/holds`,o=rr();if(g("run",n)!==void 0||!o.length)return r`${h({label:e,at:n,unit:"ml",short:!0})}${o.length?rS(t):u}`;let i=l=>l===Y$?q("run","Another cup",t,{...Zc(t),holds:""},ot("run",n)):q("run",`Cup: ${l}`,t,{...Zc(t),cup:l}),s=l=>O("studio",`/cups/${j(l)}`);return vt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(l=>[l,`${l}, ${s(l)}`]),[Y$,"Another cup"]],unsaid:"choose ...",chosen:O("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function Zc(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var rS=t=>r`<button type="button" @click=${()=>q("run","A cup of the studio",t,Zc(t))}>
    A cup of my studio
  </button>`;function X$(){return at()?r`<div class="row">
    ${rr().map(t=>h({of:"studio",label:`${t} holds`,at:`/cups/${j(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${aS()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function aS(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||Z$();e.value="",q("studio",`${n} added`,`/cups/${j(n)}`,"",ot("studio",`/cups/${j(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${Z$()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function Z$(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!rr().includes(e))return e}}var lS=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),Xc=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function gl(t){let{run:e}=Xc(t);return F({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${at()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${$o("How warm",[Xc(t)])} ${N("run",e)} ${uS(t)}`})}function uS(t){let{run:e,studio:n}=Xc(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>Wt(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${vt({label:"The lye cools in",...Zs(l),answers:lS,unsaid:"not given",optional:!0})}
  </div>`}var $e=()=>$(a.run.now,"/pipe")!==void 0;function tb(){let t=e=>{let n=M(e,"/pipe",{formula:"",fills_headspace:"",whip:ar()});return at()?n:M(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ut("set-up pipe"),_e("run","Topping added",t,B("lane-pipe"))}function dS(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:M(o,i,void 0),t)}function cS(){_e("run","Topping removed",dS,B("topping-back"))}function eb(){let t=a.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||$e()?u:r`<button type="button" id="topping-back" @click=${Fs}>Bring the topping back</button>`}function tp(){return r`${$S()} ${gl("pipe")}
    <p class="choice"><button type="button" @click=${cS}>Take the topping away</button></p>`}var pS=["trials","beads","envelope"];function ep(t){return pS.every(e=>g("run",`/pipe/${e}`)===void 0)&&ge("run","/pipe",`${Q("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${N("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${ee({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:ar()},body:mS})}
      ${ee({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:fS})}
    </div>
    ${ee({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:c$,body:()=>p$(t)})}
    ${t?gS(t):u}`}function mS(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${I(t,n)}>
            ${h({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${K(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Z(t,"One more trial",()=>U(t,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${lr("/pipe/trials/weigh_cup")}
    </div>
    ${N("run","/pipe/trials/weigh_cup")}`}function fS(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${S({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var hS={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function gS(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},l)=>C({key:`pipe.by.${i}`,label:hS[i],note:o(l),shown:yt(a.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${_S(t)}`}function _S(t){let e=t.visible_by?.suggested_correction;if(!e||a.is_old)return u;let n=R(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(a.run.now,`${o}/correction`)!==e.correction,l=()=>q("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function np(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${lr("/pipe/whip")}
    </div>
    ${N("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function $S(){let t="/pipe/pace",e=(n,o,i,s=!1)=>h({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return F({name:"pace",pointers:[t],summary:"Piping speed",body:()=>ee({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function bS(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function ur(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,bS(t,e))}>It is really so: keep it</button>`:u}var op=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]),_l;function nb(t){uo();let{plan:e,run:n,record:o,is_old:i}=a,s=[t,n.file,e,o.version];return ib(s,!i&&e!==void 0,{mould:t,batches_of:n.file,below_brim_mm:e?.pour.below_brim_mm})}var ob=(t,e)=>ib([t,e],e!==void 0,{mould:t,batches_of:"studio.json"});function ib(t,e,n){return op(a.ways.of,t)?a.ways:(e&&!op(_l,t)&&wS(t,n),{})}async function wS(t,{mould:e,batches_of:n,below_brim_mm:o}){_l=t;let i=o===void 0?{}:{"below-brim":`${o} mm`},s=await yS({file:e,"batches-of":n,...i});op(_l,t)&&f({ways:{of:t,...s}}),_l=void 0}async function yS(t){try{return{ways:(await nn(t)).ways}}catch(e){if(!(e instanceof w))throw e;return{failed:L(e.complaint)}}}var sp=500,vS=()=>$(a.run.now,"/cut")===void 0&&kS()>=sp,kS=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,$l={run:"/cut/kerf",studio:"/kerf"};function sb(t){ut("set-up cut"),q("run","Cut","/cut",{bar:ip[t],...at()?{}:{kerf:""}},ot("run",`/cut/bar/${Object.keys(ip[t])[0]}`))}function xS(){q("run","Left whole","/cut",void 0,B("cut-into-bars"))}function rb(){return vS()?r`<button type="button" id="cut-into-bars" @click=${()=>sb("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>sb("slab")}>Cut it into bars</button>`:u}var ip={loaf:{thickness:""},slab:{length:"",width:""}};function TS(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var RS={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function ab(){let t=TS(),e=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=O("run","/cut/along");return r` ${S({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>ip[o]})}
    <div class="row">
      ${t==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Wt($l,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${$o("Kerf",[$l])}</p>
    ${t?S({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:RS[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${xS}>Leave it whole</button>`}var bl=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function wl(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${D(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var yl=t=>A(yt(a.units,t)),SS=t=>t.charAt(0).toUpperCase()+t.slice(1);function vl({ways:t,failed:e}){return e!==void 0?r`<p class="hint">How the ways of measuring compare is not known: ${e}.</p>`:t?.ways.length?r`<section class="ways" aria-labelledby="ways-title">
    <h3 id="ways-title">What one cavity holds, by each way</h3>
    <p>${t.used_because}</p>
    <ul class="each-way">
      ${t.ways.map(n=>AS(n,t))}
    </ul>
    ${PS(t)} ${t.remarks.map(n=>r`<p class="aside">${n}</p>`)}
  </section>`:u}function AS(t,{below_brim_mm:e}){let{by:n,brimful_ml:o,at_line_ml:i,low_ml:s,high_ml:l,rests_on:d,used:c}=t;return r`<li data-by=${n} class=${c?"is-used":""}>
    <p class="way-name">
      <b>By ${n}</b> ${c?r`<span>✓ the plan uses it</span>`:r`<span>${DS(t)}</span>`}
    </p>
    ${i===null?u:r`<p>to the pour line <b class="at-line">${yl(i)}</b></p>`}
    <p>to the brim <b class="brimful">${yl(o)}</b></p>
    <p>
      ${s===null||l===null?u:r`between ${yl(s)} and ${yl(l)}${e===null?"":" to the line"}: `}${s===null?SS(d):d}
    </p>
  </li>`}function DS({differs_percent:t}){let e=Kt(Math.abs(t),1);return e==="0.0"?"the same":`${e} % ${t>0?"more":"less"}`}var PS=({below_brim_mm:t,line_of:e})=>t===null?u:r`<p class="aside">
        The pour line is ${A(gt(a.units,t))} below the
        brim${e==="as asked"?"":`, ${e}`}.
      </p>`;function OS({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-t.brim-2*n+i,d=l-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>T`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Bs(e,l))}${p("side",Bs(t.loops))}
    </svg>
  </div>`}function Ui(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${OS(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${A(yt(a.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${A(yt(a.units,i.total_ml))} together`:u},
      ${A(gt(a.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${A(yt(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(l=>r`<li>${l.text}</li>`)}
          </ul>`:u}`}var FS={mm:"in",g:"oz","\xB0C":"\xB0F"},MS={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function kl(t,e,n=""){let o=rp(t);if(o)return o.unit??"";let i=Pe($(z(),t));return MS[e]?.test(i)?i:n||(a.units==="us"?FS[e]??e:e)}var xl=()=>f({typed:void 0}),zi=t=>`d${t.replaceAll("/","-")}`,rp=t=>a.typed?.key===zi(t)?a.typed:void 0,Tl=t=>rp(t)?.text??String($(z(),t)??"");function wo(t){let{complaint:e}=it();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function ap(t,e,n,o){let{pointer:i}=t,s=l=>{let d=l.target.value,c=t.unit?kl(i,t.unit,t.unit_before):"";f({typed:{key:zi(i),text:d,unit:c}}),Dt(i,LS(t,d,c))};return r`<input
    id=${zi(i)}
    .value=${D(Tl(i))}
    @input=${s}
    @blur=${xl}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${wo(i)?"true":"false"}
  />`}function LS(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Rt(e)?`${e.trim()} ${n}`:e}function be(t,e){let n=zi(t.pointer),o=wo(t.pointer),i=BS(t.pointer)??t.hint,s=t.unit?` (${kl(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${ap(t,o||i?`${n}-said`:void 0,e)}
    ${_t(n,o,i)}
  </div>`}function BS(t){let e=$(z(),t),n=rp(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function Rl(t){let e=t.toLowerCase(),{file:n,shipped:o}=it().open,i=o?"":n;return a.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function dr(t){let{open:e}=it();try{if(await an(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await qr()})}catch(n){if(!(n instanceof w))throw n;return pc(n)}a.run.file&&(Ue(),rt()),t(e.file)}var Hn="/shape/points",lb=500,yo=(t,e)=>[Hn,t,...e?[e]:[]].join("/"),ub=t=>Array.from({length:t.least},()=>({}));function db(t){let e=de(z(),Hn),n=WS(),{complaint:o}=it(),i=o?.field===Hn&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${kl(yo(-1,s.name),s.unit,cb(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,l)=>CS(t,l,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=lb} @click=${()=>Al(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function CS(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=IS(e),s=l=>{let{name:d,label:c,unit:p}=t.columns[l],m={label:c,pointer:yo(e,d),unit:p,unit_before:cb(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return ap(m,i?`point-${e}-said`:void 0,ES(t,e,l),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Al(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>pb(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function WS(){let t=[...ys(z()),...oa(z())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function IS(t){let{complaint:e}=it();return wo(yo(t))??(e?.about===yo(t)?e.line:void 0)}function cb(t,e,n){let o=(i,s)=>Pe($(z(),yo(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function Sl(t,e){queueMicrotask(()=>document.getElementById(zi(yo(t,e)))?.focus())}function Al(t,e){let n=[...de(z(),Hn)];n.length>=lb||(n.splice(e,0,{}),xl(),Dt(Hn,n),Sl(e,t.columns[0].name))}function pb(t,e,n=0){let o=de(z(),Hn).filter((i,s)=>s!==e);xl(),Dt(Hn,o.length?o:[{}]),Sl(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function ES(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let l=!Tl(yo(e,o))&&!Tl(yo(e,i));if(s.key==="Enter"&&s.shiftKey)Al(t,e+1);else if(s.key==="Enter"&&n===0)Sl(e,i);else if(s.key==="Enter"&&e+1<de(z(),Hn).length)Sl(e+1,o);else if(s.key==="Enter")Al(t,e+1);else if(s.key==="Backspace"&&l&&de(z(),Hn).length>1)pb(t,e,e>0?1:0);else return;s.preventDefault()}}var lp={weighings:[""]},up=/\.(3mf|gltf|glb)$/i;function Dl(t){let e=Jn(t);return e?{kind:t,points:ub(e)}:{kind:t}}var NS=()=>Dt("/water",lp),$n=t=>Ie(z(),t),cr=()=>ws(z());function mb(t){let{open:e,answer:n,is_old:o}=it();return r`${hn(e,()=>{dr(t)})} ${gn(e)}
    ${e.shipped?u:Hi(a.files?.moulds.find(i=>i.file===e.file))}
    ${$n("shape")&&$n("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${$n("shape")?dt("Shape",cr(),Object.entries(lh),jS):u}
    <div class="beside ${Jn(cr())?"rows":""}">
      <div>
        ${dp()} ${$n("shape")?qS():u} ${$n("mesh")?US():u}
        ${cp()} ${$n("water")?KS():u} ${VS()}
      </div>
      <div class="stays">${Ui(n,o,hb())} ${QS(t)}</div>
    </div>`}function jS(t){let e={...it().shapes,[cr()]:z().shape};v(it(),{shapes:e,answer:void 0}),Dt("/shape",e[t]??Dl(t))}function HS(){let{shipped:t,file:e}=it().open;return t?a.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function dp(){let t=HS();return be({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function qS(){let t=cr(),e=Jn(t);return r`${hi(t).length?r`<div class="row">
          ${hi(t).map(n=>be({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?db(e):u}`}function cp(t=Vu(z())){return r`<div class="row">
      ${t?u:be({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${be({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${be({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${be({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var pp=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],mp=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function US(){let t=o=>String($(z(),`/mesh/${o}`)??""),e=(o,i,s)=>{let l=wo(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${dt(o,t(i),s,d=>Dt(`/mesh/${i}`,d||void 0))}
      ${l?r`<p class="complaint">${l}</p>`:u}`},n=wo("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${up.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",pp)} ${e("Which way is up","up",mp)}
    ${t("role")==="body"?zS():u}
    <div class="row">
      ${be({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${be({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function zS(){let t=$(z(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${dt("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>Dt("/mesh/on_board",e==="yes"?!0:void 0))}`}function KS(){let t=$(z(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>Dt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(z(),"/water/weighed_in"),i=e===void 0||e==="brim"?wo("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${be({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${dt("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?be({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?be({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${dt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>Dt("/water/weighed_in",s))}
    <div class="row">
      ${de(z(),"/water/weighings").map((s,l)=>be({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},JS(l)))}
    </div>
    ${it().complaint?.field==="/water/weighings"?r`<p class="complaint">${it().complaint.line}</p>`:u}
    <button type="button" @click=${fb}>One more round</button>`}function fb(){let t=de(z(),"/water/weighings").length;Dt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var JS=t=>e=>{e.key==="Enter"&&(t+1===de(z(),"/water/weighings").length?fb():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function VS(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${$n("shape")?u:t("Add measures, as a check",()=>Dt("/shape",Dl("block")))}
    ${$n("shape")&&$n("mesh")?t("Leave the measures out",()=>Dt("/shape",void 0)):u}
    ${$n("water")?t("Leave the water out",()=>Dt("/water",void 0)):t("Add weighed water",NS)}
  </div>`}function hb(){let t=oa(z()).length;return t?[...vs(z()),t===1?"the other number of a point":`the other numbers of ${t} points`]:vs(z())}function QS(t){let e=String(z().name??"").trim(),n=Rl(e),{open:o,answer:i,is_old:s,complaint:l}=it(),d=i&&!s&&!l&&!hb().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{dr(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${fp(e,n)}
    ${l?r`<p class="alarm" role="status">${GS(l.field)}${l.line}</p>
            ${ur(z(),l.keep,Dt)}`:u}`}var fp=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function GS(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=hi(cr()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var YS=200*2**20;async function gb(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:e}),Dt("/name",t.name.replace(/\.\w+$/,"")),t.size>YS){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return v(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await kf(t,o=>v(e,{share:o}));v(e,{share:1,upload:n.file}),await $b(e)}catch(n){v(e,{complaint:n instanceof w?n.message:String(n)})}}async function $b(t){let e=t.questions+1;v(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let l=await Si({file:n,unit:o,role:i,up:s});e===t.questions&&v(t,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(e!==t.questions)return;let d=o?t.sizes:e1(l.complaint),c=d.length&&!o?void 0:L(l.complaint);v(t,{sizes:d,complaint:c,is_measuring:!1})}}async function ZS(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await $f({file:n,unit:o,up:i});e===t.questions&&v(t,{inspection:s})}catch(s){if(!(s instanceof w))throw s;e===t.questions&&v(t,{complaint:L(s.complaint)})}}function XS(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(t1)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{ZS(t)}}>List every defect of the mesh</button>`}var t1=({text:t})=>r`<li>${t}</li>`;function e1({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function hp(t,e){v(t,e),$b(t)}function bb(t,e){let n=l=>{let d=l.target;gb(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),gb(l.dataTransfer?.files[0])},[i,s]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${a.mesh?n1(a.mesh,t,e):u}`}function n1(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,l])=>[s,l?`${s}: ${l} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!up.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${dt("Unit of the file's numbers",t.unit,i,s=>hp(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?XS(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${dt("Role",t.role??t.answer?.gauge.role,pp,s=>hp(t,{role:s}))}
            <h4>Which way is up</h4>
            ${dt("Up",t.up??"",mp,s=>hp(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${Ui(t.answer)} ${o1(t,e,n)}`:u}`}var wb=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function o1(t,e,n){let o=String(z().name??"").trim(),i=Rl(o),s=o&&!i&&!t.is_keeping;return r`${dp()} ${cp(wb(t))} ${fp(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>_b(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>_b(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function _b(t,e,n){v(t,{is_keeping:!0});try{let o=i1(t,await xf(t.upload,r1(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await s1(o))return e(o);Fi(o,"mesh",it().title),await dr(n),v(t,{complaint:a.mould?.complaint?.line})}catch(o){v(t,{complaint:o instanceof w?o.message:String(o)})}v(t,{is_keeping:!1})}function i1(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=z();return{...i,...wb(t)||o===void 0?{}:{cavities:o},mesh:n}}async function s1(t){try{return await nn({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof w&&e.status===422)return!1;throw e}}var r1=t=>gi(t.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Pl={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},yb={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function vb(t){Tt(),cn();let e={...yb,shape:Dl("block")};t==="mesh"?Fi(yb,"mesh",Pl[t]):Fi(t==="water"?{...e,water:lp}:e,"form",Pl[t]),Fl()}async function kb(t,e){cn();let n=await y_(t,e);return n&&Fl(),n}async function Ol(t){cn(),await v_(t)&&Fl()}function a1(t){Fi(t,"form","More about this mould"),Fl()}function Fl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function xb(t){if(!a.mould)return;let{way:e,title:n}=a.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?bb(t,a1):mb(t)}
  </section>`}var gp=()=>f({chosen_mould:void 0});function pr(t,e){Tt();let n=a.files?.moulds.find(s=>s.file===t),o=a.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};f({chosen_mould:i}),Tb(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var l1=2e3;async function Tb(t){if(t===a.chosen_mould)try{v(t,{answer:await Si({file:t.file})}),v(t,{complaint:void 0})}catch(e){v(t,{complaint:e instanceof w?e.message:String(e)}),e instanceof w&&e.may_pass&&window.setTimeout(()=>{Tb(t)},l1)}}var u1=t=>a.files?.moulds.find(e=>e.file===t);function Rb(t,e){let n=()=>e(async()=>{await kb(t.file,t.shipped)&&gp()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${il(u1(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?Ui(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        ${vl(ob(t.file,t.answer?.gauge))}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:p1(t,e)}
    </div>
  </section>`}var Sb=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=sp;function d1(t){let e=Sb(t)?t.slice.trim():"";return Rt(e)?`${e} mm`:e||void 0}var c1=t=>r`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${D(t.slice)}
      @input=${e=>v(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function p1(t,e){let n=bl(t.sell),o=d1(t),i=s=>()=>e(()=>Na({mould:t.file,name:t.name,formula:s,sell:n,slice:o}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${wl("mould-sell",t.sell,s=>v(t,{sell:s}))}
      ${Sb(t)?c1(t):u}
    </div>
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(s=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(s.file)}>
              <b>${s.name}</b><span>${s.note||s.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function mr(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:s,chosen_mould:l,stock:d}=a;if(t!=="reading")return Tn(t)?{name:t,file:e.file,of:e}:t==="moulds"&&s?{name:"describing",file:s.open.id,of:s}:t==="moulds"&&l?{name:"chosen",file:l.file,of:l}:t==="order"?{name:t,file:n?.open.file,of:n}:t==="trail"?{name:t,file:d.trail?.of}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:fs[o],file:e.file,of:e}}async function Db({name:t,file:e}){let n=Tt();if(!(!(t===fs.apart&&a.formulas.apart?.file===e)&&!await ja())&&n())try{await m1(t,e)}catch(i){if(!(i instanceof w||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function m1(t,e=""){let n=t;if(Tn(n))return Ab(e,n);let o=["pour","pipe"].find(i=>fs[i]===t);if(o){await Ab(e,"formula"),a.view==="formula"&&se(o);return}if(t===fs.apart)return Us(e);if(t==="order")return zs(e);if(t==="trail"&&e)return Ae(e);await f1(t,e)}async function Ab(t,e){t===a.run.file||!t?f({view:a.run.file?e:"runs",typed:void 0}):await Cn(t,e)}async function f1(t,e){let n=t;gp(),cn(),f({view:ue(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=ca(oe).find(i=>i.id===e);t==="describing"&&o&&await Ol(o),t==="chosen"&&pr(e),t==="shelf"&&h1(),g1()}function h1(){Gg(),po()}async function g1(){try{await Se(),Ba()}catch(t){if(!(t instanceof w))throw t;f({list_complaint:t.message})}}var we={id:""},Gt,_p=!1,bp=new Map,Ml=JSON.parse(sessionStorage.getItem("left")??"{}");function Ob(){let t=mr();_p||!t||Gt&&sn(Gt)===sn(t)||(Ll(),Fb(t))}function Fb(t){let e=!Gt||Gt.name===t.name&&Gt.of!==void 0&&Gt.of===t.of;if(Gt=t,e)return Ki();we={id:crypto.randomUUID(),before:location.hash},bp.set(we.id,t.of),history.pushState(we,"",sn(t)),requestAnimationFrame($1)}function Ki(){Gt&&(we.id||(we={id:crypto.randomUUID()}),bp.set(we.id,Gt.of),history.replaceState(we,"",sn(Gt)))}var _1="button, input, select, summary, a[href], [tabindex]",$p=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),Mb=t=>[...document.querySelectorAll(`#main :is(${_1})`)].filter(e=>$p(e)===t);function Ll(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?Ml[we.id]={scroll:scrollY}:Ml[we.id]={scroll:scrollY,words:$p(t),nth:Mb($p(t)).indexOf(t)}}function $1(){scrollTo(0,0),document.activeElement?.closest("#main")||Lb()}function Lb(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function Bb(){let{scroll:t,words:e,nth:n=0}=Ml[we.id]??{scroll:0},o=e===void 0?void 0:Mb(e)[n];o?o.focus({preventScroll:!0}):Lb(),scrollTo(0,t)}var Yt=t=>Cb({name:t,file:Tn(t)?a.run.file:void 0});async function Cb(t){Ll(),await wp(t,()=>{let e=mr();e&&!(Gt&&sn(Gt)===sn(e))&&Fb(e)})}async function wp(t,e){_p=!0;try{await Db(t)}finally{_p=!1,e()}}function Wb(t){we.before===sn(t)?history.back():Cb(t)}var Pb=Promise.resolve();function b1(t,e){Ll();let n=()=>history.state?.id!==t?.id;Pb=Pb.then(async()=>{if(!e)return Ki();if(n())return;let o=t?bp.get(t.id):void 0,i=[a.run,a.formulas.apart,a.order].find(s=>s&&s===o);await wp(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{Gt=mr(),!n()&&(we=t??{id:crypto.randomUUID()},Ki(),requestAnimationFrame(Bb))})})}function Ib(){history.scrollRestoration="manual",addEventListener("popstate",t=>{of()||b1(t.state,Fu(location.hash))}),addEventListener("pagehide",()=>{Ll(),sessionStorage.setItem("left",JSON.stringify(Ml))})}async function Eb(){let t=Fu(location.hash);t&&(we=history.state??{id:""});let e=Tt();await h_(Sf(t)),t&&e()&&w1(t)&&await wp(t,()=>{Gt=mr(),Ki(),requestAnimationFrame(Bb)}),await rc()}var w1=t=>!Gt||sn(Gt)===sn(t);function ni(t=a.plan?"The figures below are out of date.":"No figures yet."){let e=fl()?void 0:a.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${qn(e.field)}${L(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${vp}>Ask again</button>`:u}
              ${Fe("run")?ur(a.run.now,e.keep,(n,o)=>X("run",n,o)):yp(e)}
              ${y1()?r`<button type="button" @click=${kp}>Go to the field</button>`:u}`:u}
    </div>
    ${sr()}`}function yp({keep:t}){let{studio:e}=a.beside;return e&&Fe("studio")?ur(e.now,t,(n,o)=>X("studio",n,o)):u}function qn(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function vp(){rt(),a.run.failed&&ln()}function y1(){if(Nb())return!0;let t=pn();return t?document.activeElement!==t:v1()}var v1=()=>a.view!=="set-up"&&Fe("run")&&a.complaint!==void 0&&a.complaint.field!=="",Nb=()=>["pour","pipe"].find(t=>a.complaint?.file&&a.complaint.field&&Fe(t));function kp(){let t=pn(),e=Nb();if(t)return te(t);e?se(e):Yt("set-up"),k1(()=>te(pn()))}function k1(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var jb=()=>[...ua().map(t=>hn(t)),...la().map(gn)];function Hb(){let t=a.formula_of,e=a.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${jb()}${ni()}
      <p>Reading the formula ...</p>
      ${Tp(t)}`;let n=a.plan&&ji(a.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${jb()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${x1(t)}</p>
    <div class="choice">${Tp(t)}${t==="apart"?T1():u}</div>
    ${Hi(a.files?.formulas.find(i=>i.file===e.file))} ${R1(t,o,n)} ${Ub(t)}
    ${Kc(t)} ${Jc(t,o)} ${Qc(t)} ${Nc(t)}
    <div class="choice">${Tp(t)}</div>`}var qb=t=>[Ub(t),Kc(t),Jc(t,void 0),Qc(t),Nc(t)],xp=()=>String(a.run.now.name??a.run.file);function x1(t){let e=a.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===e&&a.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${xp()}".${n}`:o?`Base and topping of "${xp()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${xp()}".${n}`}function Tp(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>Wb(e?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function T1(){return r`<button type="button" @click=${()=>{ac("pour")}}>Use it as the base</button> ${$e()?r`<button type="button" @click=${()=>{ac("pipe")}}>Use it as the topping</button>`:u}`}function R1(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...S1(t,n),...A1(t,e)].map(([o,i,s])=>r`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${s?_o(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${D1(t)}
  </section>`}function S1(t,e){let n=t==="pipe"?Lc(e,e.whippings[0]):"";return n?[["For one whipping",n]]:Qt(e.whole)?[["For one batch",Ye(e.whole,e.batch)]]:[]}function A1(t,e){let n=fo(t).length?" \u26A0":"";return[["Fats",A(H(a.units,e.fats_g))],["Superfat as weighed",`${re(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...ul(e).map(({one:o})=>[o.name,A(ei(a.units,o))])]}function D1(t){let e=fl()?void 0:a.complaint;if(!e)return r`<div role="status"></div>
      ${sr()}`;let n=Fe(t),o=n&&e.field!==""&&document.activeElement!==pn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${qn(e.field)}${L(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${vp}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>pn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${sr()}`}function Ub(t){return r`<section class="card" aria-label="Name">
    ${h({label:"Name",of:t,at:"/name",wide:!0})}
    ${F({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Rp=t=>v(a.new_formula,t);function zb(){let{name:t,copied:e}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>ct(async()=>{await i(t.trim()),Rp({name:"",copied:""})});return r`${Le("Formulas")}
    <section aria-label="Formulas">
      ${Ze(n,P1)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${D(t)}
            @input=${i=>Rp({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(__)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Rp({copied:i.target.value})}
          >
            <option value="" .selected=${D(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${D(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>$_(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${Be("formula")}`}function P1(t){let e=t.changed?[`changed ${E(t.changed)}`]:[];return _n({kind:Co,one:t,facts:e,open:()=>Us(t.file)})}function O1(t){cn(),pr(t,`Saved in ${t}.`)}function Kb(){let{chosen_mould:t}=a;return r`${Le("Moulds")}
  ${t?Rb(t,ct):xb(O1)??r`${B1()} ${F1()}`}`}function F1(){let t=(a.files?.moulds??[]).filter(n=>!n.shipped),e=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Ze([...t,...e],M1)} ${Be("mould")}
  </section>`}function M1(t){let e=t.shipped?L1(t.file):I1(t.file),n=()=>Promise.resolve(pr(t.file));return _n({kind:oe,one:t,facts:e,picture:t.file,open:n})}var L1=t=>a.catalogue.filter(e=>e.path===t).map(e=>`${A(yt(a.units,e.brimful_ml))}, ${J(e.cavities,"cavity","cavities")}; ${e.description}`);function B1(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${C1()}
    <div class="choice">
      ${Object.entries(Pl).map(([t,e])=>r`<button type="button" @click=${()=>vb(t)}>${e}</button>`)}
    </div>
  </section>`}function C1(){return ca(oe).map(t=>{let e=String(bt(t.text)?.name??"").trim()||W1(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>ct(()=>Ol(t))}>Continue</button>
        <button type="button" @click=${()=>{Gn(oe,t.id),Y()}}>Discard it</button>
      </div>
    </div>`})}var W1=({file:t})=>a.files?.moulds.find(e=>e.file===t)?.name;function I1(t){let e=ec(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[A(yt(a.units,e.brimful_ml)),J(e.cavities,"cavity","cavities")]:["measuring ..."]}var E1=300,N1=1e3;function Bl(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=a,i=t?.of===e&&t?.wish===n;!i&&!o&&j1();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function Ap(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var fr,Sp=!1;function j1(){let{plan:t,quote_wish:e}=a;Sp||fr?.of===t&&fr?.wish===e||(window.clearTimeout(fr?.timer),fr={of:t,wish:e,timer:window.setTimeout(()=>{q1()},a.quoted?E1:0)})}var Cl=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function Jb(t,{numbers:e="",by:n,figure:o}){let i=Cl(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Wl=()=>Jb({file:a.run.file,run:a.run.now},a.quote_wish);function H1(t,{numbers:e=""}){return t.field==="/sell"&&Cl(e)?{...t,file:"",field:"sell"}:t}async function q1(){fr=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=a;if(!(!e||!n||i)){Sp=!0;try{let s=await hf(Jb(n,o));t===a.run&&f({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof w))throw s;if(t!==a.run)return;let l=H1(s.complaint,o);f({quoted:{of:e,wish:o,quote:a.quoted?.quote,complaint:l}}),s.may_pass&&window.setTimeout(Ap,N1)}finally{Sp=!1}}}var U1=300,z1=1e3,Pp=t=>{let{by:e,figure:n}=a.quote_wish;return[t.open.now,t.open.file,t.times,e,n,a.plan,jo()]},Vb=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function Qb(){let t=zt(),{quoted:e}=t;if(!On(t.open.now)||t.open.theirs)return{is_old:!0};let n=Vb(e?.of,Pp(t));!n&&!a.is_old&&K1(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Op(){let{quoted:t}=zt();t&&v(zt(),{quoted:{...t,of:[]}})}function Fp({open:t,times:e}){let{by:n,figure:o}=a.quote_wish,i=Cl(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Il,Dp=!1;function K1(t){let e=Pp(t);Dp||Vb(Il?.of,e)||(window.clearTimeout(Il?.timer),Il={of:e,timer:window.setTimeout(()=>{J1(t)},t.quoted?U1:0)})}async function J1(t){if(Il=void 0,t===a.order){Dp=!0;try{if(await Te(),await me(),await bi(),!On(t.open.now))return;let e=Pp(t);await V1(t,e)}catch(e){if(!(e instanceof w))throw e}finally{Dp=!1,v(t,{})}}}async function V1(t,e){try{v(t,{quoted:{of:e,quote:await gf(Fp(t))}})}catch(n){if(!(n instanceof w))throw n;v(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===a.order&&Op(),z1)}}var Ji={of:"order",at:"/lines",in_order:!0,stays:!0};function Gb(){return r`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${N("order","/lines")} ${k(Ji).map((t,e)=>Q1(e))} ${G1()}
  </section>`}var Yb=()=>(a.files?.runs??[]).filter(({shipped:t})=>!t);function Zb(t){let e=An(zt().open.file,t);return a.files?.runs.find(n=>n.file===e)}var Xb=t=>Zb(t)?.name||t;function tw(t){let e=Xn(zt().open.now).map(({run:n})=>n);return Yb().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function Q1(t){let{run:e}=Xn(zt().open.now)[t]??{run:""},n=`/lines/${t}`,o=Zb(e)?.pieces,i=e?Xb(e):`line ${t+1}`;return r`<div class="row" id=${I(Ji,t)} role="group" aria-label=${i}>
    ${vt({of:"order",label:"Run",at:`${n}/run`,answers:tw(e),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${J(o,"piece")}`})}
    ${k(Ji).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${K(Ji,t,i)}
  </div>`}function G1(){let t=tw();return Yb().length?t.length?r`<div class="row">
    ${vt({of:"order",label:k(Ji).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&U(Ji,{run:e},Xb(e))})}
  </div>`:r`${u}`:r`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var Y1=300,Z1=1e3,ew=()=>new Date().toDateString(),X1=()=>({file:a.run.file,run:a.run.now});function tA(){let{run:t,plan:e}=a;return{known:a.run_days,rests_on:()=>[a.plan,ew()],is_ready:e!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??X1(),is_open:()=>t===a.run,keep:n=>f({run_days:n})}}function eA(){let{order:t}=a;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,a.plan,jo(),ew()],is_ready:On(e.now)&&!e.theirs&&!a.is_old,written:async()=>{await Te(),await me(),await bi()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===a.order,keep:n=>v(t,{days:n})}}var El=t=>t==="run"?tA():eA(),nw=t=>El(t).question(),ow=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function Nl(t){let e=El(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=ow(n?.of,e.rests_on());!i&&o&&nA(t,e);let s=i?n?.complaint:void 0;return{days:n?.days,complaint:s,is_old:!o||!i||s!==void 0}}function Bp(t){let e=El(t);e?.known&&e.keep({...e.known,of:[]})}var Mp=new Map,Lp=new Set;function nA(t,e){let n=e.rests_on(),o=Mp.get(t);Lp.has(t)||ow(o?.of,n)||(window.clearTimeout(o?.timer),Mp.set(t,{of:n,timer:window.setTimeout(()=>{oA(t)},e.known?Y1:0)}))}async function oA(t){Mp.delete(t);let e=El(t);if(e?.is_ready){Lp.add(t);try{await e.written(),await iA(t,e)}catch(n){if(!(n instanceof w))throw n}finally{Lp.delete(t),f({})}}}async function iA(t,{known:e,rests_on:n,question:o,is_open:i,keep:s}){let l=n();try{let d=await _f(o());i()&&s({of:l,days:d})}catch(d){if(!(d instanceof w))throw d;if(!i())return;s({of:l,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Bp(t),Z1)}}var Np=864e5,vo=t=>Math.round(Date.parse(`${t}T00:00Z`)/Np),iw=t=>new Date(t*Np).toISOString().slice(0,10),sA=t=>new Date(t*Np).getUTCDay()===1,Wp=40,Ip=18,rA=7,Ep=class{#n;#t;constructor({calendar:e}){this.#n=vo(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(vo(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(sA);return e.filter((n,o)=>o%Math.ceil(e.length/rA)===0).map(iw)}is_at_end=e=>vo(e)-this.#n>.88*this.#t};function sw(t){let e=new Ep(t),{calendar:n}=t;return r`<figure class="day-strip">
    <p class="aside">${Pt(n[0].day)} to ${Pt(n.at(-1).day)}</p>
    ${Cp(t,e,20,dA(e))}
    <p>Hours of your making days</p>
    ${Cp(t,e,Wp+2,cA(t,e))}
    ${t.batches.map(o=>r`<p>${gA(t,o)}</p>
          ${Cp(t,e,Ip+6,pA(t,e,o))}`)}
    <figcaption>${$A(t)}</figcaption>
  </figure>`}var Cp=(t,e,n,o)=>r`<svg width="100%" height=${n} aria-hidden="true">
    ${T`${aA} ${uA(t,e)}
      ${e.mondays().map(i=>T`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${lA(t).map(i=>T`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,aA=T`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,lA=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),uA=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>T`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),dA=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>T`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${J_(e)}</text>`);function cA({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,s,l)=>{let d=Wp*l/n;return T`<rect class=${i} x=${e.at(s,.1)} width=${e.wide(.8)} y=${1+Wp-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:s,used_min:l})=>T`${o("free",i,s)} ${o("used",i,l)}`)}function pA(t,e,n){let{poured:o,unmoulded:i,cured:s}=n,l=(p,m,_)=>{let b=vo(_)-vo(m);return T`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide(b)} height=${Ip} />`},d=o===i,c=(p,m)=>hA(t,p,n).map(_=>T`<circle class=${p} cx=${e.at(_,.5)} cy=${3+Ip/2} r=${m} />`);return T`${l("mould",o,d?iw(vo(o)+1):i)}
    ${vo(i)<vo(s)?l("cure",i,s):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var mA=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),fA=({lyes:t},e)=>t.filter(({batches:n})=>n.some(({of:o,runs:i,batch:s})=>o===e.of&&i.join()===e.runs.join()&&s===e.batch)).map(({made:n})=>n);function hA(t,e,n){let o=t.days.filter(({acts:i})=>i.some(s=>s.act===e&&mA(s,n)));return[...new Set([...o.map(({day:i})=>i),...e==="chill"?fA(t,n):[]])]}function gA({asked:t,batches:e},n){let o=({of:l,runs:d})=>l===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",s=e.filter(o).length;return`${i}${s>1?`, batch ${n.batch} of ${s}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var _A=(t,e)=>r`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,hr=t=>T`<rect class=${t} x="1" y="1" width="24" height="18" />`;function $A({calendar:t,days:e}){let n=i=>e.some(({acts:s})=>s.some(({act:l})=>l===i));return[[!0,hr("used"),"hours used"],[!0,hr("free"),"hours free"],[!0,hr("mould"),"in the mould"],[!0,hr("cure"),"curing"],[t.some(({off:i})=>i),hr("off"),"day off"],[n("cast"),T`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),T`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,T`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,s])=>_A(i,s))}var oi=t=>["/work",t].join("/");function jl(t=!1){let e=(n,o,i,s=!1)=>h({of:"studio",label:o,at:oi(n),unit:i,optional:!0,takes_part:!0,is_due:s,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var bA=({cautions:t})=>t.filter(({severity:e})=>e!=="danger").map(({severity:e,text:n})=>e==="note"?r`<p>${Ot(n)}</p>`:r`<p class="minded"><strong>Caution</strong> ${Ot(n)}</p>`),gr=(t,e,n="")=>r`<tr>
    <th scope="row">${t}</th>
    <td><b>${A(e)}</b></td>
    <td>${n}</td>
  </tr>`;function wA(t){let{units:e}=a,{made:n,for:o,lye_of:i,pot:s}=t,l=s.full_pot_g===null?"":`with its pot ${A(nt(e,{g:s.full_pot_g,g_text:s.full_pot_g_text,oz_text:s.full_pot_oz_text}))}`;return r`<h3>One pot of lye solution, made on the evening of ${Pt(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${Ot(o)};
      ${R(s.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${gr("Water, distilled",nt(e,ht(s,"water_")))}
        ${s.alkalis.map(d=>gr(d.name,nt(e,ht(d,""),"down")))}
        ${gr("Lye solution in the pot",nt(e,ht(s,"lye_")),l)}
        ${s.shares.map(d=>r`${gr(`Out of it for ${d.batter}`,nt(e,ht(d,"lye_"),"down"),`superfat then ${re(d.superfat_percent)}`)}
            ${d.top_up_g>0?gr(`and plain water to ${d.batter}`,nt(e,ht(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${bA(t)}`}var rw=({lyes:t})=>t.map(wA),aw=({lyes:t,notes:e})=>[...new Set([...t.flatMap(({cautions:n})=>n),...e].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var ii=t=>v(a.printing,t);function lw(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function uw(t){if(!a.printing.is_working){ii({is_working:!0,told:"Making it ...",on:a.view});try{await yA(),ii({told:await t()})}catch(e){ii({told:e instanceof Error?e.message:String(e)})}ii({is_working:!1})}}async function yA(){await Te(),await me();let t=a.view==="order"?a.order?.open:void 0,e=Pn("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var bn=()=>a.printing.on===a.view?a.printing.told:"",It=(t,e)=>()=>uw(async()=>{let n=URL.createObjectURL(await on(e));return lw(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),Hl=t=>()=>uw(async()=>(lw(await vf(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),vA=t=>{ii({paper:t}),localStorage.setItem("paper",t)},ql=()=>dt("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],vA),At=(t,e,n="",o=!1)=>r`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,wn=({words:t,kind:e,file:n,of:o,is_asleep:i},s="")=>r`${At(`${t}, to print`,Hl({kind:e,...o}),s,i)}
  ${a.files?.makes_pdf?At(`${t}, PDF`,It(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,yn=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var vn={run:"/money/currency",studio:"/currency"},Ul={run:"/money/prices",studio:"/prices"},Xe=()=>mn(vn)!==void 0;function Vi(){let[t,e]=[g("run",vn.run),g("studio",vn.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[vn,Ul]}var zl=()=>O("studio",vn.studio)||String(mn(vn)??"");async function dw(t,e=""){if(t==="run"||!a.order)return;let{open:n}=a.order,o=Xn(n.now).map(({run:s})=>An(n.file,s)),i=o.find(s=>Kl(s,e))??o[0];(!o.includes(a.run.file)||o.some(s=>Kl(s,e)))&&await Cn(i,"set-up")}var Kl=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),cw=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function _r(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(Q(t,n));if(o)return o}}var pw=(t,e)=>{ut("set-up studio"),Vt("studio",t),Yt("set-up"),cw(()=>te(_r("studio",e)))};async function mw(t){await dw(t),at()||await $a(),pw("days","/days/making/monday")}var kA=["order","run","pour","pipe","studio"];async function jp(t,{file:e,field:n}){if(t==="order"&&Kl(a.order.open.file,e))return te(_r("order",n));await dw(t,e);let o=kA.find(i=>Kl(io(i)?.file??"",e));if(o==="pour"||o==="pipe")se(o);else{if(o==="studio")return pw(n.startsWith("/work")&&Xe()?"money work":"days",n);if(_r("run",n))return te(_r("run",n));Yt("set-up")}cw(()=>te(_r(o??"run",n)))}function Jl(t){let{days:e,complaint:n,is_old:o}=Nl(t);return r`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?xA(t,n):u}
    ${e?r`<div class=${o?"old":""}>${TA(t,e)}</div>
            ${CA(t,o)}`:n?u:r`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function xA(t,e){let{field:n,is_fault:o}=e;return o?r`<p class="alarm" role="status">${L(e)}</p>
      <button type="button" @click=${()=>Bp(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!at()?r`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{mw(t)}}>To my making days</button>`:["/work",oi("each_batch")].includes(n)?r`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{jp(t,{...e,field:oi("each_batch")})}}
      >
        To the time of a batch
      </button>`:r`<p class="alarm" role="status">${qn(n)}${Ot(L(e))}</p>
    ${n?r`<button type="button" @click=${()=>{jp(t,e)}}>Go to the field</button>`:u}`}var TA=(t,e)=>r`${LA(e)} ${RA(t,e)} ${sw(e)} ${DA(t,e)} ${rw(e)} ${FA(e)}
  ${MA(e)} ${BA(e)}`,Hp=(t,e,n)=>r`<small>${t?e:n}</small>`;function RA(t,e){let{kept:n,promise:o,promise_proved:i,from:s}=e;return n===null?r`<p class="when">
        Begun today, ${Pt(s)}, promise it for <b>${Pt(o)}</b>.
        ${Hp(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>te(document.getElementById(Q(t,"/due")))}>
        Give it a due day
      </button>`:n?SA(e):AA(e)}function SA({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:s,pieces:l,last_making_day:d}]=t;return r`<p class="when">
      Begin on <b>${Pt(e)}</b> at the latest to have ${J(l,"piece")} by
      <b>${Pt(s)}</b>.
      ${Hp(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?r`<p>The last day to pour any of it is ${Pt(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${Pt(o)}.
      ${i?u:r`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function AA({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:s,rest_on:l})=>i?r`${i} of ${J(o,"piece")} by ${Pt(s)}, the rest on <b>${Pt(l)}</b>.`:r`none of the ${J(o,"piece")} by ${Pt(s)}, all of them on <b>${Pt(l)}</b>.`;return r`${t.filter(({kept:o})=>o===!1).map(o=>r`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Hp(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var DA=(t,{days:e})=>r`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>r`<li>
            <h3>${Pt(n.day)} <small>${PA(n)}</small></h3>
            <ul>
              ${n.acts.map(OA)}
            </ul>
          </li>`)}
    </ol>
  </details>`,PA=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${Va(e)} of ${Va(t)}`:"",OA=({text:t,min:e,caution:n})=>r`<li>
    ${Ot(t)}${e?r` <small>${Va(e)}</small>`:u}
    ${n?r`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function FA({what_if:t,kept:e}){if(!t.length)return r`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:s,proved:l})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${Pt(i)} at the latest`:`ready by ${Pt(s)}`,l?"":" (the search ended there)"].join("");return r`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>r`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function MA({extras:t}){return t.length?r`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>r`<li>Batch ${n} of ${e} fills ${J(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function LA(t){let e=aw(t);return e.length?r`<div class="dangers">
    ${e.map(n=>r`<p class="danger"><strong>${he}</strong> ${Ot(n)}</p>`)}
  </div>`:u}function BA({notes:t}){let e=t.filter(({severity:o})=>o!=="danger"),n=({severity:o,text:i})=>o==="note"?r`<p>${Ot(i)}</p>`:r`<p class="minded"><strong>Caution</strong> ${Ot(i)}</p>`;return e.length?r`<h3>To mind</h3>
        ${e.map(n)}`:u}function CA(t,e){let n=nw(t),o=yn(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return r`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${At("Calendar file (.ics)",It(`${o} days.ics`,{kind:"calendar",days:n}),"",e)}
      ${wn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${At("Table of the days (.csv)",It(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${bn()}</p>
  </section>`}var si=t=>(e,n,o="")=>r`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>r`<td><b>${n(i)}</b></td>`)}
    </tr>`,$r=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function br(t,e,n,o){let i=`quote ${e}`,s=a.open.has(i),l=`quote-${e.replaceAll(/\W/g,"-")}`,d=r`<button
    type="button"
    class="line"
    aria-expanded=${s?"true":"false"}
    aria-controls=${s?l:u}
    @click=${()=>Ct("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
  </button>`;return r`${si(t)(d,n)}
  ${s?r`<tr class="opened">
          <td colspan=${t.length+1} id=${l}>${t.map(o)}</td>
        </tr>`:u}`}var wr=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function Vl({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var Ql=(t,{items:e},n)=>wr(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:l})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),Gl=(t,e)=>br(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>r`${WA(e(n),n.cash)} ${IA(n.cash)}`),WA=(t,e)=>r`${wr(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:l})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,IA=t=>wr("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function yr(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var fw=t=>`${R(t,1)} %`;function EA(t){return"margin_percent"in t?`margin ${R(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${R(t.markup_percent,2)} %`:"price as set"}var qp=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function Yl(t,e,{way:n,by:o,ask:i,with_tax:s},l,d=u){let c=i===s,p=si(t),m=b=>qp(n,b),_=(b,y)=>l?r`${y} ${_o(b)}`:y;return r`<tbody>
    ${$r(r`<span class="way">${n}</span>, ${EA(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Up),"ask")}
    ${e?p("tax in it",m(({tax:b})=>c?b:"none")):u}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>fw(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>fw(b.markup_percent)))}
  </tbody>`}var Up=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function Zl(t,e){let n=o=>t.filter(({prices:i})=>i.some(s=>s.way===o&&s.is_below_cost));return yr(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var zp=t=>t===1?"once":`${t} times`;function hw({times:t,currency:e,has_tax:n},o){let i=si(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(s=>r`<th scope="col"><b>${zp(s.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:s})=>s)}
        </tbody>
        <tbody>
          ${$r("It costs",t)} ${t[0].lines.map((s,l)=>NA(t,l))}
          ${i("The whole order",({cost:s})=>s,"sum-of")}
        </tbody>
        <tbody>
          ${Gl(t,s=>`made ${zp(s.times)}`)}
        </tbody>
        ${yr(t).map((s,l)=>Yl(t,n,s,l===0,qA(t,s.way)))}
      </table>
    </div>`}var Kp=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,NA=(t,e)=>br(t,Kp(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>r`${jA(n[e])} ${n[e].parts.map(({part:o})=>HA(n[e],o))}`),jA=t=>wr(`A piece of ${Kp(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,Vl(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),HA=(t,e)=>Ql(`${e} of all of them, ${Kp(t)}`,t,e),qA=(t,e)=>t[0].lines.map(({run:n},o)=>si(t)(`${n??""}, a piece`,({lines:i})=>qp(e,Up)(i[o]))),gw=({times:t})=>Zl(t,e=>`the order loses money, made ${e.map(n=>zp(n.times)).join(", ")}.`);function _w({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:s})=>s.map(l=>`${i??""}: ${l}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?r`<div class="dangers">
    ${[...new Set(n)].map(o=>r`<p class="danger"><strong>${he}</strong> ${o}</p>`)}
  </div>`:u}function $w({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:s})=>s).filter(({severity:s})=>s!=="danger");return!n.length&&!e.length?u:r`<ul class="limits">
    ${n.map(s=>r`<li>
          <b
            >Poured together (${s.word}): ${qt(s.lines.map(l=>o[l].run??""))} from one base,
            "${s.formula}", ${A(H(a.units,s.make_g))} in
            ${J(s.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:s})=>r`<li>${s}</li>`)} ${e.map(s=>r`<li>${s}</li>`)}
  </ul>`}function UA(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===a.printing.way)?.way}function Xl({file:t,question:e,prices:n,is_old:o}){let i=yn(t),s=UA(n),l={quote:n.length>1&&s?{...e,way:s}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return r`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?r`<p class="question">The price that is offered</p>
            ${dt("The price that is offered",s,d,p=>v(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?wn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!s}):u}
      ${wn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${a.files?.studios.length?r`${wn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${At("Shopping list, table",It(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?s?u:r`<p class="hint">An offer has one price: choose which.</p>`:r`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${bn()}</p>
  </section>`}var Jp=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#s()}disconnectedCallback(){this.#o.disconnect(),this.#r()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#r(),this.#a(),this.#s())}#s(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#r(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await zA(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";ke(this.#e?r`<img src=${this.#e} alt=${this.#t} />`:r`<p class="hint">${this.#n?e:u}</p>`,this)}};async function zA(t){try{return[URL.createObjectURL(await on({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof w))throw e;return["",e.message]}}customElements.define("cost-picture",Jp);function bw(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,s]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return r`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(s)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?jt:Wl()}
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
          ${KA(t).map(({sell:d,each:c})=>r`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function KA({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var ww=({sell:t})=>`${t} to sell`;function yw({numbers:t,currency:e,has_tax:n},o){let i=si(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
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
          ${$r("A piece costs",t)} ${JA(t).map(s=>VA(t,s))}
          ${i("Cost of a piece",s=>s.cost_each,"sum-of")} ${i("The whole run",s=>s.cost)}
        </tbody>
        <tbody>
          ${Gl(t,ww)}
        </tbody>
        ${yr(t).map((s,l)=>Yl(t,n,s,l===0))}
      </table>
    </div>`}var JA=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],VA=(t,e)=>br(t,e,n=>Vl(n,e),n=>Ql(`${e} of the whole run, ${ww(n)}`,n,e)),vw=({numbers:t})=>Zl(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function kw(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${Xe()?GA():QA()}
  </section>`}var QA=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Vp()}>To the prices paid</button>`;function Vp(t,e="lane-studio"){ut("set-up studio"),t&&Vt("studio",t),Yt("set-up"),requestAnimationFrame(()=>W(B(e)))}function GA(){let{quote:t,complaint:e,is_old:n}=Bl();return r`${t?r`${YA(t)} ${vw(t)}`:u}
    <div class="row">${tD(e)}</div>
    ${Qp()?u:Gp(t?.currency,e)} ${e?XA(e):u}
    ${t?iD(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function YA({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${he}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var ZA=["sell","margin","markup","price"],Qi=(t,e)=>t?.file===""&&t.field===e?L(t):void 0;function XA(t){return ZA.some(e=>Qi(t,e))?u:r`<p class="alarm" role="status">${qn(t.field)}${L(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${Ap}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${kp}>Go to the field</button>`:u}
    ${yp(t)}`}function tu({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:l,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${D(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${_t(t,s,i)}
  </div>`}function tD(t){let{numbers:e}=a.quote_wish;return tu({id:"quote-numbers",label:"Numbers of pieces",value:e??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Qi(t,"sell"),take:n=>xs({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&xs({numbers:void 0})}})}var eD=()=>at()?Vp("money asking",`${Q("studio","/asking")}-name`):Vp(),Qp=()=>Object.keys(g("studio","/asking")??{}).length>0,nD=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],oD={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Gp(t,e){let{by:n,figure:o}=a.quote_wish,{label:i,unit:s}=oD[n??"price"],l=d=>s&&Rt(d)?`${d.trim()} ${s}`:d;return r`${dt("A price, for this moment",n,nD,d=>{xs({by:d,figure:""}),W(B("quote-figure"))})}
    ${n?r`<div class="row">
            ${tu({id:"quote-figure",label:i,unit:s||t,value:s?o.replace(/ %$/,""):o,complaint:Qi(e,n),take:d=>xs({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${eD}>Keep my ways of selling</button>`}function iD(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${t.remarks.map(o=>r`<p class="hint">${o}</p>`)} ${yw(t,e)}
  ${sD(t,e)} ${bw(t,e)}
  ${Xl({file:a.run.file,question:Wl(),prices:t.numbers[0].prices,is_old:e})}`}function sD({numbers:t,steps:e,pack_steps:n,pack_steps_untold:o,gaps:i,currency:s},l){let d=c=>c===null?"":`, ${c} ${s} more`;return r`<div class="worth-making ${l?"old":""}">
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
  </div>`}function xw(){let{order:t}=a;if(!t)return r`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return r`${hn(e)} ${gn(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${E(String(n))}`:u}</p>
    ${Gb()} ${On(e.now)?Jl("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${On(e.now)?aD():rD()}
    </section>
    ${On(e.now)?pD():u}`}var rD=()=>r`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function aD(){let{quote:t,complaint:e,is_old:n}=Qb();return r`${t?r`${_w(t)} ${gw(t)}`:u}
    <div class="row">${lD(e)}</div>
    ${Qp()?u:Gp(t?.currency,e)} ${e?dD(e):u}
    ${t?r`${cD(t)} ${$w(t)} ${hw(t,n)}
          ${Xl({file:zt().open.file,question:Fp(zt()),prices:t.times[0].prices,is_old:n})}`:e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}var lD=t=>tu({id:"order-times",label:"How often it is made",value:zt().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:Qi(t,"times"),take:e=>v(zt(),{times:e})}),uD=["times","margin","markup","price"];function dD(t){if(uD.some(n=>Qi(t,n)))return u;let e=Fe("order");return r`<p class="alarm" role="status">
      ${e?r`${qn(t.field)}${L(t)}`:t.line}
    </p>
    ${t.is_fault?r`<button type="button" @click=${Op}>Ask again</button>`:e&&pn()?r`<button type="button" @click=${()=>te(pn())}>Go to the field</button>`:u}`}function cD({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?r`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function pD(){let{file:t,now:e}=zt().open,n={plan:{file:t,order:e},paper:a.printing.paper};return r`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${ql()}
    <div class="choice">
      ${wn({words:"Bench sheets",kind:"sheet",file:`${yn(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${bn()}</p>
  </section>`}var mD=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function Tw(){let t=[...a.files?.orders??[]].sort(mD),e=a.new_order.trim(),n=()=>{ct(async()=>{await S_(e),f({new_order:""})})};return r`${Le("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Ze(t,fD):r`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${D(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":r`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${Be("order")}`}function fD(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":J(e,"piece"),n?`due ${E(n)}`:"",o?`changed ${E(o)}`:""].filter(Boolean);return _n({kind:Bo,one:t,facts:i,open:()=>zs(t.file)})}function Sw(){if(a.view==="order"&&a.order)return Rw(a.order.open);let t=ro();if(t)return Rw(t);let e=hD();if(e)return e;let{run:n}=a,o=a.formula_of==="apart"||!(V(n)||n.theirs||n.failed);return a.view==="formula"&&o?gD():n.theirs?Xp(n):n.failed?nu(`Not saved: ${n.failed}`):V(n)?Zp:eu(n.shipped?Yp:`Saved in ${n.file}`)}function Rw(t){return t.theirs?Xp(t):t.failed?nu(`Not saved: ${t.failed}`):V(t)?Zp:eu(t.shipped?Yp:`Saved in ${t.file}`)}var Yp="Built-in: your first change is saved as a copy.",Zp={words:"Saving ...",is_kept:!1},eu=t=>({words:t,is_kept:!0}),nu=t=>({words:t,is_kept:!1,is_failed:!0}),Xp=t=>nu(No(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function hD(){let t=a.formulas.apart?"apart":"run",e=Pn(t);if(e)return Xp(e);if((t==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&V(o)))return a.complaint?.file===""?nu(`Not saved: ${a.complaint.problem}`):Zp}function gD(){let t=a.formulas[a.formula_of];return eu(t?t.shipped?Yp:`Saved in ${t.file}`:"")}function iu(){let{view:t,mould:e,order:n,past:o,future:i}=a;if(t==="shelf"||t==="trail")return{};if(t==="moulds"&&e)return ou(e,k_,x_);let s=ue(t)?ro():void 0;return s?ou({past:Aw(s,o),future:Aw(s,i)},Fs,Rd):ue(t)?{undo:Ls()&&Wc,redo:Md()&&x$}:t==="order"&&n?ou(n,A_,D_):ou({past:o,future:i},Fs,Rd)}function Aw(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var ou=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var Dw={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips",shelf:"Shelf"},_D={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},$D="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",bD="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",tm=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${T`<path d=${t} />`}</svg>`;function Fw(){let t=a.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${Tf.map(e=>Mw(e,Dw[e],r`${Dw[e]}`))}
              </nav>
              ${yD()}`}
    </div>
    ${t?u:vD()}
  </header>`}var wD={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`},su=["metric","both","us"],Pw={metric:"g",both:"both",us:"oz"},Ow=t=>()=>{f({units:t}),localStorage.setItem("units",t)};function yD(){let t=su[(su.indexOf(a.units)+1)%su.length];return r`<div class="tools units" role="group" aria-label="Units">
      ${su.map(e=>r`<button type="button" aria-pressed=${a.units===e?"true":"false"} @click=${Ow(e)}>
            ${wD[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${Ow(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${Pw[a.units]}<span
        class="unseen"
        >. Change to ${Pw[t]}</span
      >
    </button>`}function vD(){let{undo:t,redo:e}=iu();return r`<div class="bar">
    ${a.run.file?kD():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${tm($D)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${tm(bD)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?AD():u}
  </div>`}function kD(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Rf.map(xD)}</div>
  </nav>`}function xD(t){let[e,n]=_D[t],o=TD(t);return Mw(t,o?`${e}, ${o.words}`:e,r`${tm(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function TD(t){if(t==="watch"&&M_())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="record"&&RD())return{sign:"\u2717",words:"refused"};if(t==="set-up"&&SD())return{sign:"\u25CB",words:"missing"}}var RD=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:t})=>Oa(t.id)>0),SD=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Mw(t,e,n){let o=a.view===t||a.view==="order"&&t==="orders"||a.view==="trail"&&t==="shelf"||a.view==="learned"&&t==="record";return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{Yt(t)}}
  >
    ${n}
  </button>`}function AD(){let{words:t,is_kept:e,is_failed:n}=Sw();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var Lw=()=>r`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${Jl("run")}`;var em=t=>xn("GET",`/api/learned?run=${encodeURIComponent(t)}`),Bw=t=>ve("/api/learned/take",t);var DD=1e3,Ww=()=>[a.run.file,a.plan,a.record.version],PD=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]),Gi=t=>f({learned:{...a.learned,...t}});function Iw(){uo();let{learned:t}=a,e=a.record.run===a.run.file&&a.record.version!==void 0&&!a.is_old,n=PD(t.of,Ww());return e&&!n&&!nm&&OD(),{...t.run===a.run.file?t:{},is_old:!e||!n}}var ru=()=>Gi({of:void 0}),nm=!1;async function OD(){nm=!0;try{await FD()}finally{nm=!1,f({})}}async function FD(){let t=Ww(),e=a.run.file;try{let n=await em(e);e===a.run.file&&Gi({of:t,run:e,kept:n,failed:void 0})}catch(n){if(!(n instanceof w))throw n;if(e!==a.run.file)return;Gi({of:t,run:e,failed:L(n.complaint)}),n.may_pass&&window.setTimeout(ru,DD)}}var MD=()=>V(a.run)||[...un()].some(V);async function LD(t,e){if(!MD())return[t,e];await Te(),await me();let n=await em(a.run.file);return[n.learned?.figures.find(({name:o})=>o===t.name)??t,n]}var Ew=t=>jw(t,"take"),Nw=t=>jw(t,"undo");async function jw(t,e){let{kept:n,doing:o}=a.learned;if(o!==void 0||!n||!t.in_file)return;Gi({doing:t.name,said:void 0});let i=a.run.file;try{let[s,l]=await LD(t,n),{file:d}=t.in_file,c=await Bw({run:i,file:d,version:l.versions[d]??"",[e]:s.name});BD(c),Cw(t,`${d} was changed.`)}catch(s){if(!(s instanceof w))throw s;Cw(t,`Nothing was written: ${L(s.complaint)}.`,!0),ru()}finally{Gi({doing:void 0})}}function Cw({name:t},e,n=!1){Gi({said:{name:t,words:e,is_refused:n}}),P(e)}function BD(t){for(let e of[a.run,...un()])e.file===t.file&&Ah(e,t);rt(),Wa()}function ri(t,e){let{units:n}=a;return t==="mm"?`${e>0?"+":""}${A(gt(n,e))}`:t==="ml"?A(yt(n,e)):t==="g"?A(H(n,e)):t==="g/ml"?`${Kt(e,3)} g/ml`:t==="%"?`${R(e,1)} %`:t==="min"?e<5?`${Kt(e*60,0)} s`:`${Kt(e,0)} min`:R(e,3)}var au=t=>t===1?"1 batch":`${t} batches`,Hw=t=>t.charAt(0).toUpperCase()+t.slice(1),qw=({figures:t,batches:e})=>t.length?`From ${au(e)} recorded beside this run. Only a batch's own notes tell a figure.`:`${au(e)} recorded beside this run: a figure is shown once three of them tell it.`;function Uw(t,e){let n=`learned-${t.name.replaceAll(/\W/g,"-")}`,{unit:o,value:i,low:s,high:l,values:d}=t;return r`<article class="learned-figure" data-name=${t.name} aria-labelledby=${n}>
    <h3 id=${n}>${Hw(t.words)}</h3>
    <div class="learned-told">
      <p class="learned-value"><b>${ri(o,i)}</b></p>
      <p>
        between <span class="low">${ri(o,s)}</span> and <span class="high">${ri(o,l)}</span>, from
        <span class="count">${au(d.length)}</span>
      </p>
      <p>
        ${t.used_now===null?CD(t):r`The plan uses <b class="used">${ri(o,t.used_now)}</b>.`}
      </p>
    </div>
    ${WD(t)} ${ID(t)} ${ND(t)} ${jD(t,n,e)} ${qD(t)}
    ${UD(t)}
  </article>`}var CD=({unit:t})=>t==="min"?"The studio says nothing of it yet.":"The plan uses none.";function WD({values:t,low:e,high:n,value:o,used_now:i}){let s=[...t.map(m=>m.value),e,n,...i===null?[]:[i]],[l,d]=[Math.min(...s),Math.max(...s)],c=d-l||1,p=m=>6+288*(m-l)/c;return r`<svg class="learned-strip" viewBox="0 0 300 30" aria-hidden="true">
    ${T`<rect class="range" x=${p(e)} y="6" width=${Math.max(1,p(n)-p(e))} height="18" />
      <path class="told" d="M${p(o)} 3v24" />
      ${i===null?u:T`<path class="used" d="M${p(i)} 1v28" />`}
      ${t.map(m=>T`<circle cx=${p(m.value)} cy="15" r="3" />`)}`}
  </svg>`}function ID({standing:t,in_file:e}){return e?.is_taken?u:t==="stands nowhere"||!e?r`<p class="aside">For you to know: no file has a place for it.</p>`:t==="too few"?r`<p class="aside">Too few batches yet to tell it from chance: it can be taken from six on.</p>`:t==="as planned"?r`<p class="aside">What the plan uses lies between these: no reason to change it.</p>`:e.refused?r`<p class="minded">
        <strong>Cannot be taken:</strong> it ${e.refused.problem}. ${Hw(e.refused.remedy)}.
      </p>`:u}var ED=({of:t,unit:e,now:n,then:o})=>r`<li>
    ${t}: ${ri(e,n)} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
    <b>${ri(e,o)}</b>
  </li>`;function ND({with_it:t,no_plan_with_it:e,in_file:n}){return n?.is_taken?u:e!==void 0?r`<p class="minded"><strong>With it there would be no plan:</strong> ${e}.</p>`:t.length?r`<p>With it:</p>
        <ul class="learned-effects">
          ${t.map(ED)}
        </ul>`:u}function jD(t,e,n){let{in_file:o,standing:i}=t;if(!o)return u;let{file:s,says:l,would_say:d,is_taken:c,taken:p,refused:m}=o,_=!c&&!m&&i==="suggested",b=n||a.learned.doing!==void 0;return r`${p?HD(p,o):u}
    ${_?r`<p class="in-file">
            In ${s}: ${l??"nothing yet"} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
            <b>${d}</b>
          </p>`:u}
    <div class="row">
      ${_?r`<button
              type="button"
              class="strong"
              ?disabled=${b}
              aria-describedby=${e}
              @click=${()=>{Ew(t)}}
            >
              Take it
            </button>`:u}
      ${p?r`<button
              type="button"
              ?disabled=${b}
              aria-describedby=${e}
              @click=${()=>{Nw(t)}}
            >
              Take back
            </button>`:u}
    </div>`}var HD=({on:t,batches:e,before:n,steps:o},{file:i,says:s})=>r`<p class="taken">
    <strong><span aria-hidden="true">✓</span> Taken</strong> on ${E(t)} from ${au(e)}: <b>${s}</b> in
    ${i}, and the plan uses it. Before: ${n??"nothing"}${o>1?", which was taken as well":""}.
  </p>`;function qD({name:t}){let{said:e}=a.learned;return e?.name!==t?u:r`<p class=${e.is_refused?"complaint":"hint"} role="status">${e.words}</p>`}var UD=({values:t,unit:e,name:n})=>r`<details>
    <summary>Batch by batch</summary>
    <ul class="learned-batches" data-of=${n}>
      ${t.map(o=>r`<li>${o.batch}, ${E(o.date)}: <b>${ri(e,o.value)}</b></li>`)}
    </ul>
  </details>`;var zD=({years:t})=>t.map(String).reverse();function zw(t){let e=a.run.file,n=yn(e),o=i=>({kind:"picture",learned:{file:e,...i}});return r`<section class="out" aria-labelledby="learned-pictures">
    <h3 id="learned-pictures">Plan against actual, in one picture</h3>
    <div class="choice">
      ${At("This run",Hl(o({})))}
      ${At("This run, SVG",It(`${n} plan against actual.svg`,o({})))}
      ${zD(t).map(i=>r`${At(`The year ${i}`,Hl(o({year:i})))}
          ${At(`The year ${i}, SVG`,It(`${n} ${i}.svg`,o({year:i})))}`)}
    </div>
    <p role="status">${bn()}</p>
  </section>`}function Kw(){let{kept:t,failed:e,is_old:n}=Iw();return r`<section class="learned" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    <p><button type="button" @click=${()=>{Yt("record")}}>Back to the record</button></p>
    <h2>What your batches say</h2>
    ${e===void 0?u:r`${KD(e)}`}
    ${t?JD(t.learned,n):e===void 0?r`<p class="hint" role="status">Reading ...</p>`:u}
  </section>`}var KD=t=>r`<p class="alarm" role="status"><strong>What they say could not be read:</strong> ${t}.</p>
    <button type="button" @click=${ru}>Ask again</button>`;function JD(t,e){return t?.batches?r`<div class=${e?"old":""}>
    <p class="hint">${qw(t)}</p>
    ${t.figures.map(n=>Uw(n,e))} ${VD(t.figures)} ${QD(t)}
    ${GD(t)} ${YD(t)} ${zw(t)}
  </div>`:r`<p>No batch is recorded yet. A figure is shown once three batches tell it.</p>`}function VD(t){let e=t.some(({level_percent:o})=>o!==null),n=t.some(({level_percent:o})=>o===null);return t.length?r`<p class="aside">
    Each dot is a batch. The shaded part is the range, the line in it what they say together, the dashed line what the
    plan uses.
    ${e?"From six batches on, a range holds the true figure 19 times of 20, unless notes are wrong in the same way each time. ":u}
    ${n?"Below six, it is from the least to the greatest.":u}
  </p>`:u}var QD=({left_out:t})=>t?r`<p class="aside">
        ${t===1?"1 batch was":`${t} batches were`} of another formula or mould under the same name, and
        ${t===1?"is":"are"} not counted where that matters.
      </p>`:u,GD=t=>t.untold.length?r`<h3>What the notes cannot tell</h3>
        <ul class="limits">
          ${t.untold.map(({text:e})=>r`<li>${e}</li>`)}
        </ul>`:u,YD=t=>t.contradictions.length?r`<h3>Notes that contradict each other</h3>
        <ul class="limits">
          ${t.contradictions.map(({text:e})=>r`<li>${e}</li>`)}
        </ul>`:u;function Vw(t){if(!g$(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=Qt(e)?`${J(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Jw(t,"pour","The base, whole run")}
      ${e.pipe?Jw(t,"pipe","The topping, whole run"):u} ${ZD(t)}
    </div>
  </section>`}function Jw(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...L$(i),...ul(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:l,i:d})=>lu(`${e}.ingredients.${d}.g`,l.name,ei(a.units,l)))}
    ${lu(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",H(a.units,i.make_g))}
  </div>`}var lu=(t,e,n)=>C({key:`needs.${t}`,label:e,shown:n,of:t});function ZD(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,l)=>s.colours.map((d,c)=>({layer:s,one:d,i:l,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>nt(a.units,ht(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:l,i:d,j:c})=>lu(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${s.name}`,ei(a.units,l)))}
    ${o.map((s,l)=>lu(`dust.${l}.g`,s.name,i(s)))}
  </div>`}function Qw(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:l}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${C({key:"piece.fresh",label:c("Fresh"),shown:H(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:C({key:"piece.cured",label:c("Cured"),shown:H(a.units,o),of:"piece.cured_g"})}
      ${s?C({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:H(a.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:C({key:"piece.label",label:"Net weight for the label",shown:H(a.units,i,0),of:"piece.label_g"})}
      ${l?C({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${C({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${om(t)}
    </section>
    ${kw()} ${Vw(ji(t))}`}function om(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var XD={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function vr({kind:t,unit:e}){let n=XD[t]??[];return e&&n.includes(e)?[e,...n.filter(o=>o!==e)]:n}var Gw="degrees",tP=()=>localStorage.getItem(Gw)??void 0,Yw=t=>localStorage.setItem(Gw,t);function im(t){return t.kind!=="temperature"?vr(t)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":tP()}function Zw(t,e){let n=t.kind==="length"&&e?e.startsWith("-")?"below":"above":void 0,o=n?e.replace(/^[+-]\s*/,""):e,i=Pe(o);return vr(t).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function Xw({number:t,unit:e,side:n}){let o=t.trim();if(!o)return"";let i=e&&Rt(o)?`${o} ${e}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function uu({kind:t},{number:e,unit:n,side:o}){return t==="temperature"&&!n&&Rt(e)?"Is that in \xB0C or in \xB0F?":t==="length"&&o===void 0&&/[1-9]/.test(e)&&!/^\s*[+-]/.test(e)?"Above the line or below it?":void 0}var tn,eP=(t,e)=>`note-${t}-${e.replaceAll(/[^\w]/g,"-")}`;function du(t,e){let n=dn(t.begun.id,e.key),o=eP(t.begun.id,e.key),i=n?.refused!==void 0;return r`<div class="blank ${i?"wants":""}" data-key=${e.key}>
    ${e.kind==="choice"?r`<p class="blank-words" id="${o}-label">${e.words}</p>`:r`<label class="blank-words" for=${o}>${e.words}</label>`}
    <div class="blank-value">${nP(t,e,o,n)}</div>
    <p class="blank-beside">
      ${e.planned?r`<span class="planned">planned <b>${e.planned}</b></span>`:u}
      ${lP(t,e,n)}
    </p>
    ${pP(t,e,o,n)}
  </div>`}function nP(t,e,n,o){if(e.kind==="choice")return aP(t,e,n,o);let i=ty(t,e,o),s=vr(e).length>0||e.kind==="count",l=c=>sm(t,e,{...i,number:c.target.value}),d=c=>{Yo(c),oP(t,e)};return r`<input
      id=${n}
      type=${e.kind==="date"?"date":"text"}
      inputmode=${e.kind==="count"?"numeric":s?"decimal":u}
      class=${s?"number":""}
      autocomplete="off"
      .value=${D(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||uu(e,i)?`${n}-said`:u}
      @input=${l}
      @blur=${d}
      @keydown=${c=>c.key==="Enter"&&iP(c)}
    />
    ${sP(t,e,i)} ${rP(t,e,i)}`}function ty({begun:t},e,n){if(tn?.batch===t.id&&tn.key===e.key)return tn.typed;if(n?.lacks)return{number:n.text,unit:e.kind==="temperature"?void 0:im(e)};let o=Zw(e,n?n.value:e.noted??"");return{...o,unit:o.unit??im(e)}}function sm(t,e,n,o=!1){tn={batch:t.begun.id,key:e.key,typed:n},ey(t,e,n,o),Y()}function ey(t,e,n,o){let i=uu(e,n)!==void 0;Qd(t,{key:e.key,text:n.number,value:Xw(n),is_left:o,lacks:i})}function oP(t,e){if(tn?.batch!==t.begun.id||tn.key!==e.key)return;let{typed:n}=tn;tn=void 0,ey(t,e,n,!0),Y()}function iP({target:t}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(t)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function sP(t,e,n){let o=vr(e);if(e.kind!=="temperature")return o.length?r`<span class="unit">${n.unit??o[0]}</span>`:u;let i=s=>{Yw(s),sm(t,e,{...n,unit:s},!0)};return ny(`Degrees: ${e.words}`,o,n.unit,i)}function rP(t,e,n){if(e.kind!=="length")return u;let o=i=>sm(t,e,{...n,side:i},!0);return ny(`Side: ${e.words}`,["above","below"],n.side,o)}var ny=(t,e,n,o)=>r`<div class="choice" role="group" aria-label=${t}>
    ${e.map(i=>r`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function aP(t,e,n,o){let i=o?o.value:e.noted,s=l=>{co(t,e.key,l),P(l?`${e.words}: ${l}`:`${e.words}: taken back`)};return r`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(e.choices??[]).map(l=>r`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>s(l)}>
          ${l}
        </button>`)}
    ${i?r`<button type="button" class="plain" @click=${()=>s("")}>Take back</button>`:u}
  </div>`}function lP({begun:t},e,n){if(n?.refused??n?.lacks)return r`<span class="stands not">✗ not noted</span>`;if(n)return r`<span class="stands waiting">… not kept yet</span>`;let o=tn?.batch===t.id&&tn.key===e.key;return e.noted!==void 0&&!(o&&!tn.typed.number.trim())?r`<span class="stands kept">✓ noted ${cP(e.noted_at)}</span>`:u}var uP=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),dP=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function cP(t){if(!t)return"";let e=new Date(t);return(e.toDateString()===new Date().toDateString()?uP:dP).format(e)}function pP(t,e,n,o){if(o?.refused)return rm(o,`${n}-said`);let i=uu(e,ty(t,e,o));return i?r`<p class="complaint" id="${n}-said">${i}</p>`:u}function rm(t,e){let{words:n,is_asked:o,noted:i,is_lye:s}=t.refused,l=t.value||"nothing",d=i!==void 0;return r`<div class="blank-said" role="alert">
    <p class=${s?"alarm":"complaint"} id=${e} data-lye=${s?"true":u}>
      ${s?r`<strong aria-hidden="true">⚠</strong> `:u}${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.
    </p>
    ${o||d?r`<div class="row">
            ${d?r`<button type="button" @click=${()=>qg(t)}>Keep ${i||"it blank"}</button>`:u}
            <button type="button" @click=${()=>Hg(t)}>
              ${d?`Note ${l} in its place`:`It is so: note ${l}`}
            </button>
          </div>`:u}
  </div>`}var oy="record weights";function iy(t){let{rows:e=[]}=t;if(!e.length)return u;let n=a.open.has(oy),o=e.filter(i=>n||i.noted!==void 0||dn(t.begun.id,i.key));return r`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${o.map(i=>r`${mP(i,o)} ${du(t,fP(i))}`)}
    <p>
      <button type="button" aria-expanded=${n?"true":"false"} @click=${()=>Ct("open",oy)}>
        ${n?"Fold the weights away":"Another weight than planned"}
      </button>
    </p>
  </section>`}var mP=(t,e)=>e.find(({of:n})=>n===t.of)===t?r`<h3>${t.of}</h3>`:u,fP=t=>({...t,kind:"mass",when:"base_mixed"});var kr=t=>{let{beginning:e}=a.record;e&&Ut({beginning:{...e,...t}})},sy=t=>Ut({beginning:{batch:t,code:"",answers:{}},told:void 0}),am=()=>Ut({beginning:void 0}),ry=t=>kr({code:t,complaint:void 0});async function lm(t){let{beginning:e}=a.record;if(!(!e||e.is_asking)){kr({is_asking:!0,complaint:void 0});try{a.run.shipped&&await Yn(a.run),await me(),await hP(e,t)}catch(n){if(!(n instanceof w))throw n;kr({complaint:n.complaint}),P(`Not begun: ${n.complaint.problem}`)}finally{kr({is_asking:!1})}}}async function hP({batch:t,code:e,answers:n},o){let i=a.run.file,s=Jo(t)!==void 0,l=await Cg({run:i,batch:t,seen:o,code:e.trim()||void 0,again:s,...n}),[d]=l.record.batches;Ut({run:i,beginning:void 0,told:{batch:d.begun.id,remarks:(l.record.remarks??[]).map(c=>c.text)}}),Sa(l,i),P(`The record is begun: ${d.begun.code}`),Fa(d,qo(t)),await Fn()}async function ay(t,e){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=s=>{let l=t[s];return l===void 0?o[s]:[...o[s]??[],l]};kr({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await lm(e)}var um=(t,e)=>Ut({code:{batch:t,text:e}}),cu=()=>Ut({code:void 0});async function ly(){let{code:t,run:e}=a.record;if(!t?.text.trim())return cu();try{let n=crypto.randomUUID();Sa(await xa({run:e,batch:t.batch,act:n,code:t.text.trim()}),e),cu()}catch(n){if(!(n instanceof w))throw n;Ut({code:{...t,complaint:L(n.complaint)}})}}var xr="batch-code";function pu({begun:t}){let{code:e}=a.record,n=e?.batch===t.id,o=()=>{um(t.id,t.code),W(B(xr))};return r`<div class="batch-code">
    <p><span class="aside">On the mould:</span> <b class="code">${t.code}</b></p>
    ${n?r`<div class="row">
            <div class="field ${e.complaint?"wants":""}">
              <label for=${xr}>Another code</label>
              <input
                id=${xr}
                autocomplete="off"
                .value=${D(e.text)}
                aria-describedby=${e.complaint?`${xr}-said`:u}
                @input=${i=>um(t.id,i.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{ly()}}>Use this code</button>
            <button type="button" @click=${cu}>Leave it</button>
            ${e.complaint?r`<p class="complaint" id="${xr}-said">${e.complaint}</p>`:u}
          </div>`:r`<button type="button" @click=${o}>Change the code</button>`}
  </div>`}var Tr;function gP(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var cm=t=>`cured.${t}`;function uy(t,e){let{id:n}=t.begun,o=Tr?.batch===n?Tr:{batch:n,day:gP(),pieces:"",weight:""},i=t.cured??[],s=i.find(({on:d})=>d===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return r`<div class="blank cure" data-key=${e.key}>
    <p class="blank-words">
      Weighed while it cures ${e.planned?r`<small>planned, cured: ${e.planned}</small>`:u}
    </p>
    ${$P(n).map(bP)}
    ${i.length?r`<ul class="weighings">
            ${i.map(d=>yP(t,d))}
          </ul>`:r`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${dm("Day","cure-day","date",o.day,d=>({...o,day:d}))}
      ${dm("Pieces","cure-pieces","numeric",o.pieces,d=>({...o,pieces:d}))}
      ${dm(`Weight together, ${e.unit??"g"}`,"cure-weight","decimal",o.weight,d=>({...o,weight:d}))}
      <button type="button" ?disabled=${!l} @click=${()=>_P(t,e,o)}>
        ${s?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${s?r`<p class="hint">Noted of ${E(s.on)} already: ${Da(s)}.</p>`:u}
  </div>`}var dm=(t,e,n,o,i)=>r`<div class="field short">
    <label for=${e}>${t}</label>
    <input
      id=${e}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?u:n}
      autocomplete="off"
      .value=${D(o)}
      @input=${s=>{Tr=i(s.target.value),Y()}}
    />
  </div>`;function _P(t,{unit:e="g"},n){let o=Rt(n.weight)?`${n.weight.trim()} ${e}`:n.weight.trim(),i=n.pieces.trim(),s=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;co(t,cm(n.day),s),P(`Weighing of ${E(n.day)}: ${s}`),Tr=void 0,Y(),W(B("cure-pieces"))}var $P=t=>a.record.acts.filter(e=>e.batch===t&&e.key.startsWith("cured.")),bP=t=>{let e=E(t.key.slice(6));return t.refused?r`<p><b>${e}</b> <span class="stands not">✗ not noted</span></p>
        ${rm(t,`said-${t.id}`)}
        <div class="row"><button type="button" @click=${()=>wP(t)}>Correct it</button></div>`:r`<p><b>${e}</b>: ${t.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function wP({batch:t,key:e,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];Tr={batch:t,day:e.slice(6),pieces:o,weight:i},Y(),W(B("cure-pieces"))}function yP(t,e){let n=dn(t.begun.id,cm(e.on));return r`<li>
    <span><b>${E(e.on)}</b>: ${Da(e)} <span class="stands kept">✓ noted</span></span>
    ${n?u:r`<button
            type="button"
            aria-label="Take back the weighing of ${E(e.on)}"
            @click=${()=>co(t,cm(e.on),"")}
          >
            Take back
          </button>`}
  </li>`}function dy(){let{batches:t}=a.record;if(t.length<2)return u;let e=Aa();return r`<ul class="makings" aria-label="Batches of this run">
    ${[...t].reverse().map(n=>vP(n,n.begun.id===e?.begun.id))}
  </ul>`}function vP(t,e){let{id:n,code:o}=t.begun,i=Oa(n);return r`<li>
    <button type="button" aria-pressed=${e?"true":"false"} @click=${()=>Ko(n)}>
      <b>${o}</b> <span>${pm(t)}</span>
      <small>${Rr(t)}; ${J(t.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function pm({number:t,begun:e}){let{of:n=1}=a.record;return`${n>1||t>1?`batch ${t} of ${Math.max(n,t)}, `:""}${J(e.pieces,"piece")}, begun ${E(e.begun_on)}`}var Rr=({for_sale:t,not_for_sale_because:e=""})=>t?"For sale":`Not for sale: ${Ot(e)}`;function cy(t,e){let{number:n,begun:o}=t,i=a.bench.run===a.record.run?to(n):void 0,s=i&&new Date(i.begun_at)<=new Date(o.begun_at)?qo(n):"";return!s||Pa(t,e.key)||dn(o.id,e.key)?u:r`<p class="read-at-weights">
    <button type="button" @click=${()=>co(t,e.key,s)}>
      Note ${s}, as read at the weights
    </button>
  </p>`}function py({to_weights:t,to_learned:e}){uo();let n=Aa();return r`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${a.record.batches.length?r`<p><button type="button" @click=${e}>What your batches say</button></p>`:u}
    ${kP()} ${dy()} ${n?TP(n):xP(t)}
  </section>`}function kP(){let{failed:t,unsent:e,acts:n}=a.record,o=e!==void 0&&n.some(i=>!i.refused);return r`<div role="status">
    ${t!==void 0?r`<p class="alarm"><strong>What is recorded could not be read:</strong> ${t}.</p>`:u}
    ${o?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${e}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
  </div>`}function xP(t){return a.record.version===void 0?r`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:r`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${t}>To the weights</button></p>`}function TP(t){let{blanks:e}=t;return r`<div class="record-head">
      ${pu(t)}
      <p>${pm(t)}</p>
      <p class="sale ${t.for_sale?"is":""}">
        <span aria-hidden="true">${t.for_sale?"\u2713":"\u2717"}</span> <b>${Rr(t)}</b>
      </p>
      ${RP()?r`<button type="button" @click=${()=>Ae(t.begun.code)}>What is in it</button>`:u}
    </div>
    ${(t.as_weighed??[]).map(({severity:n,text:o})=>r`<p class=${n==="danger"?"alarm":"aside"}>
          ${n==="danger"?r`<strong aria-hidden="true">⚠</strong> `:u}${o}
        </p>`)}
    ${e?PP(t,e):r`<p class="hint">Reading ...</p>`}`}var RP=()=>!a.record.run.includes("/"),SP={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},AP="unmoulded_on",mm="Cure and test";function DP(t){let e=[];for(let n of t){let o=e.at(-1),s=n.key===AP||o?.title===mm?mm:SP[n.when],l=n.of??"";o?.title===s&&o.of===l?o.blanks.push(n):e.push({title:s,of:l,blanks:[n]})}return e}function PP(t,e){let n=DP(e);return r`<nav class="parts-of-record" aria-label="Parts of the record">
      ${n.map((o,i)=>r`<button type="button" @click=${()=>OP(i)}>${my(o)}</button>`)}
    </nav>
    ${n.map((o,i)=>FP(t,o,i))} ${iy(t)}`}var my=({title:t,of:e})=>e?`${t}: ${e}`:t,fm=t=>`record-part-${t}`;function OP(t){let e=document.getElementById(fm(t));e?.focus({preventScroll:!0}),e?.scrollIntoView({block:"start"})}var FP=(t,e,n)=>r`<section class="record-part" aria-labelledby=${fm(n)}>
    <h2 id=${fm(n)} tabindex="-1">${my(e)}</h2>
    ${e.title===mm?MP(t):u} ${e.blanks.map(o=>LP(t,o))}
  </section>`,MP=({for_sale:t})=>t?u:r`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,LP=(t,e)=>e.kind==="weighing"?uy(t,e):r`${du(t,e)} ${Gd(e)?cy(t,e):u}`;var[hy,gm]=[440,270],[Sr,hm,mu,Yi]=[64,hy-10,10,gm-52],BP=6,CP=8;function fy(t){let e=t/BP,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var Zi=t=>R(t,1);function gy(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>Zi(Sr+(hm-Sr)*d/n),s=d=>Zi(Yi-(Yi-mu)*d/o),l=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${hy} ${gm}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${fy(n).map(d=>T`<path class="grid" d="M${i(d)} ${mu}V${Yi}" />
            <text x=${i(d)} y=${Yi+20} text-anchor="middle">${Zi(d)}</text>`)}
      ${fy(o).map(d=>T`<path class="grid" d="M${Sr} ${s(d)}H${hm}" />
            <text x=${Sr-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${Zi(d)}</text>`)}
      ${T`<text x=${(Sr+hm)/2} y=${gm-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(mu+Yi)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${l}" />
        <path class="pour-line" d="M${i(e)} ${mu}V${Yi}" />`}
    </svg>
    ${WP(t)}`}function WP(t){let e=Math.max(1,Math.round(t.length/CP)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
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
              <th scope="row">${Zi(o)}</th>
              <td>${Zi(i)}</td>
              <td>${R(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var fu=Math.PI/8,IP=500,_m=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},IP))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await on(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(Ri(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof w))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#a}</p>`;ke(r`${e} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-fu)}>Turn left</button>
        <button type="button" @click=${e(fu)}>Turn right</button>
        <button type="button" @click=${n(fu)}>From above</button>
        <button type="button" @click=${n(-fu)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",_m);function _y(t){let{measured:e}=a;if(!e)return r`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${C({key:"mould.brimful",label:"To the brim",note:`${A(gt(a.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:yt(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    ${vl(nb(e.mould))}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${gy(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${EP(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function EP(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var NP=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function $y(t){let{batch:e}=a.printing;return Qt(t)&&e<=t.pieces.batches?e:0}function jP(t){if(!Qt(t))return u;let e=$y(t),n=i=>ii({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${D(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${NP(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${Ye(t,s)}`))}
      </select>
    </div>
  </div>`}function by(t){let{paper:e}=a.printing,n=yn(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,s={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},l=$y(t),d={plan:o,paper:e,...l?{batch:String(l)}:{}};return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${ql()} ${jP(t)}
    <div class="choice">
      ${wn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?At("Label draft",It(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${At("Drawing of the pour, true size",It(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${At("Drawing of the piece",It(`${n}.svg`,{kind:"piece",plan:o}))}
      ${At("Whole piece, GLB (3D viewer)",It(`${n}.glb`,{kind:"glb",plan:o}))}
      ${At("Whole piece, STL (3D printing)",It(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?r`${At("Filled cavity, GLB (3D viewer)",It(`${n} cavity.glb`,{kind:"glb",gauge:s}))}
            ${At("Cavity, STL (3D printing)",It(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${bn()||`The drawing has the pour line ${A(gt(a.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var wy=t=>by(t);var Bt={at:"/decorations"},Xi=t=>`${Bt.at}/${t}`,ko=t=>O("run",`${Xi(t)}/name`).trim()||`Decoration ${t+1}`,ae=()=>$(a.run.now,"/cut")!==void 0,ai=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),Ar=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var ye="/batch",yy=t=>`${t}/moulds_owned`;function $m(){return F({name:"batches",pointers:[ye],summary:`Batches${HP()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${N("run",ye)}
        <div class="row">${qP()} ${zP()}</div>
        ${S({question:"Cavities at each filling",at:ye,asked_at:`${ye}/fill`,chosen:g("run",`${ye}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>vy("fill",t==="full"?t:void 0)})}`})}function HP(){let[t,e]=[`${ye}/pieces`,`${ye}/casts`].map(o=>O("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function vy(t,e){let n=ft("run",ye,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function qP(){let t=g("run",`${ye}/casts`)!==void 0,e=(n,o)=>h({label:o,at:`${ye}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return ae()?g("run",`${ye}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${UP}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function UP(){q("run","Counted in loaves",ye,vy("pieces",void 0))}function zP(){let t=`${ye}/whippings`;return!$e()&&g("run",t)===void 0?u:h({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var KP={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Ce={at:"/dust"},hu=t=>O("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function ky(){ut("set-up dust"),U(Ce,{name:""},"Dust")}function JP(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function xy(t){let e=`/dust/${t}`,n=JP(e),o=hu(t),i=s=>({...ft("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...KP[s]});return r` ${h({label:"Which powder",at:`${e}/name`})}
  ${S({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${bo("run",e,o)}`}var VP={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function QP(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function Ty(t,e){let n=QP(t),o=i=>({...ft("run",t,["on_top","buried"]),...VP[i]});return ai(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:ai(t)==="bought"?r`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:F({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${S({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?GP(`${t}/on_top`):n==="buried"?ZP(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function GP(t){return r`<div class="row">
      ${h({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Ry(t,"It is turned")}`}function Ry(t,e){let n=o=>h({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return F({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var YP=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function ZP(t,e){let n=`${t}/buried`,o=e===k(Bt).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${N("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${S({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${S({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:YP,puts:l=>tO(t,l)})}
  ${i==="said"?nO(t,e):u}`}var XP=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${T`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,Sy={x:"",y:"",height:""};function tO(t,e){let n=ft("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${Ar(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Sy);return{...ft("run",t,["per_piece","per_cast"]),[Ay(t)]:i.length,buried:{...n,places:i}}}var Ay=t=>ae()?"per_cast":Ar(t)??"per_piece";function eO(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,l)=>M(s,`${t}/${l}`,void 0),n);return M(i,`${t}/${Ay(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function nO(t,e){let n=eO(t),o=k(n);return r`${XP()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let l=`${n.at}/${s}`,d=c=>h({label:`Place ${s+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${I(n,s)} role="group" aria-label="Place ${s+1} of ${ko(e)}">
        ${N("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${K(n,s,`place ${s+1} of ${ko(e)}`)}
        </div>
        ${Ry(l,`Place ${s+1} is turned`)}
      </div>`})}
    ${Z(n,"Add a place",()=>U(n,Sy,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Py=t=>`${t} made`;function oO(){let t=Xi(k(Bt).length),e=ae()?{}:{per_piece:""};ut("set-up decorate");for(let n of[Py(t),`${t} where`])Vt("run",n);U(Bt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Oy(){let[t,e]=[k(Bt).length>0,k(Ce).length>0];return r`${Z(Bt,t?"Add another decoration":"Add a decoration",oO)}
  ${Z(Ce,e?"Add another dust":"Add a dust",ky)}`}function Fy(t){let e=Xi(t);return r` ${N("run",e)} ${lO(e)}
    <div class="row">
      ${sO(e)} ${h({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${ai(e)==="bought"?u:iO(e)}
    </div>
    ${Ty(e,t)} ${bo("run",e,ko(t))}`}var iO=t=>r`${h({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function sO(t){let e=Ar(t),n=tt("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(ae()&&e==="per_piece"))return r``;let o=e==="per_cast"?ae()?"In each loaf":"In each cast":ae()?"On each bar":"On each piece",i=s=>({...ft("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${ae()?S({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?h({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var rO={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},Dy={density:"",melt_loss:"",left_in_jug:""};function aO(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(Dy),"time_per_tray_fill"]:[]],o=ai(t)==="bought"&&e!=="bought"?Dy:{};return{...ft("run",t,n),...o,...rO[e]}}function lO(t){let e=ai(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return F({name:Py(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${h({label:"What it is called",at:`${t}/name`})}
          ${h({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${S({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>aO(t,o)})}
        ${e?uO[e](t):u}
        ${e==="bought"?u:h({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var uO={mould:dO,rod:t=>r`<div class="row">
      ${h({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${h({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>h({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function dO(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${Ii("Cast in",`${t}/mould`,a.files?.moulds)}
  ${S({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?h({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${S({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var We=()=>a.plan?.piece.cost?.materials.map(t=>t.name)??[],et=t=>a.fats.find(e=>e.id===t)?.name??t,bm=8;function li({key:t,label:e,offers:n,among:o,taken:i,take:s}){let l=`find-${t}`,d=a.finding?.key===t?a.finding.text:"",c=(d.trim()?cO(d,o):n).filter(y=>!i(y)),p=y=>{f({finding:void 0}),s(y)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(y=>Xt(et(y))===Xt(m)),b=()=>{if(!m)return;let y=c.find(G=>Xt(et(G))===Xt(m)||Xt(G)===Xt(m)),x=c.length===1?c[0]:void 0;(y??x??_)&&p(y??x??m)};return r`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${e}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${d}
        @input=${y=>f({finding:{key:t,text:y.target.value}})}
        @keydown=${y=>{y.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,bm).map(y=>r`<button type="button" @click=${()=>p(y)}>${et(y)}</button>`)}
      ${_?r`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>bm?r`<p class="hint">${c.length-bm} more: type a part of the name.</p>`:u}
  </div>`}function cO(t,e){let n=e?[]:We(),o=Xt(t).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>In(l,t)!==void 0).map(({id:l})=>l),s=l=>o.every(d=>Xt(et(l)).includes(d));return[...new Set([...n.filter(l=>s(l)||i.includes(l)),...i])]}var Un="/packaging",ts={at:Un,stays:!0},My={material:"",each_piece:""},pO={studio:void 0,own:[My],nothing:[]},mO=()=>g("run",Un)===void 0?"studio":k(ts).length?"own":"nothing";function wm(){let t=mO();return F({name:"packaging",pointers:[Un],summary:`Packaging${fO(t)}`,body:()=>r`${S({question:"What goes round each piece",at:Un,is_told_elsewhere:t==="own",chosen:t,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:e=>pO[e],then:e=>e==="own"?`${Un}/0/material`:Un})}
      ${t==="own"?hO():u}`})}function fO(t){if(t==="studio")return"";if(t==="nothing")return": none";let e=tt("run",Un).map(({material:n})=>et(String(n??""))).filter(Boolean);return e.length?`: ${e.join(", ")}`:""}var hO=()=>r`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(ts).map((t,e)=>{let n=String(t.material||`packaging ${e+1}`);return r`<div class="row" id=${I(ts,e)}>
        ${h({label:`Material ${e+1}`,at:`${Un}/${e}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${e+1}`,at:`${Un}/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${K(ts,e,n)}
      </div>`})}
    ${Z(ts,"Another material",()=>U(ts,My,"A material"))}`;function Ly(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!$e()?u:r`<div class="labelled">
      ${yc(t,"Make one pot of lye solution for both",e,{})}${En("lye_solution")}
    </div>
    ${Je("lye_solution")}
    ${e?h({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function By(t){let e={at:"/bottles"},n=k(e);return F({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&$t(t)?` Weights are of ${$t(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${I(e,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${K(e,i,l)}
            </div>
            ${N("run",s)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${h({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?gO(t,i,l):u}
          </div>`})}
        ${Z(e,"Use up a bottle",()=>U(e,{name:"",holds:""},"bottle"))}`})}function gO(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>C({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:nt(a.units,ht(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Dr="/label",vm=()=>g("run",Dr)!==void 0;function Cy(){let e=g("studio",es.studio)!==void 0?{weight_spread:""}:{market:""};ut("set-up label"),q("run","Label added",Dr,e,B("lane-label"))}function Wy(){return r`${N("run",Dr)} ${_O()}
    <button type="button" @click=${()=>q("run","Label removed",Dr,void 0)}>Remove the label</button>`}var es={run:"/label/market",studio:"/label/market"};function km(){let{of:t,at:e}=Zs(es);return r`${S({of:t,question:"Where it is sold",at:t==="run"?Dr:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?$O(n):n})}
  ${$o("Where it is sold",[es])}`}function _O(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${km()}
  ${S({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:bO})}
  ${t==="weighed"?wO():r`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${mn(es)==="EU"||g("run",ym)!==void 0?yc(ym,"With the e mark",g("run",ym)===!0,!0):u}`}var ym="/label/e_mark";function $O(t){return{...ft("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function bO(t){let e=ft("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function wO(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${I(t,n)}>
            ${h({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${K(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Z(t,"One more piece",()=>U(t,"","piece"))}`}function Iy(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${Mc(t)?`${c.count} of `:""}${Ye(t,c)}`),l=`Made in ${e} batches${Mc(t)?": ":" of "}${qt(s)}; ${ol(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${Qt(t)?r`<p><b>${l}</b></p>`:u}
    ${i>0?r`<p>
            ${J(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var Ey=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Ny(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?Uy(i):0,l=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?yO(t,e,n,l):0;return{brim:n,line:o,topping:d,ball:s,proud:l,top:Math.max(n,(t.pipe?n:o)+d+l)}}function yO(t,e,n,o){let i=Ke($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[l,d]=Cd(e,e.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*t.pipe.visible_each_ml/c}function xm(t,e){let[n,o]=Cd(t,t.brim-.01),i=(n+o)/2,s=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,b)=>{let y=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${y} ${d(m)} ${y} ${d(_)} ${i+b*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+l(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Pr=(t,e)=>t===e?`shaded ${e}`:"plain";function xo(t,e,n=u){return r`${jy(t,e,n)}
  ${t==="decorate"&&Tm(e)?r`<p class="hint">${Tm(e)}</p>`:u}`}var To=(t,e)=>r`<div class="small-view">${jy(t,e,u)}</div>`;function jy(t,e,n){let o=a.measured?.outline;if(!o)return r`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=Ny(e,o),s=o.right-o.left,l=Math.max(6,s*.1),d={x:o.left-l,y:-i.top-l,w:s+2*l,h:i.top+2*l};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${OO(t,e)}>
      ${vO(t)} ${kO(t,e,o,i)} ${TO(t,e,o,i)} ${RO()}
      ${SO(t,e,o,i)} ${PO(t,e,o,i)}
      ${T`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Hy(t,e){let n=a.measured.outline,o=Ny(t,n),i=n.right-n.left,s=Math.max(6,i*.1),l=o.top+2*s;return{share:(o.top+s-e)/l,per_mm:1/l,w:i+2*s,h:l}}function vO(t){return T`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${Ey(qy())} /></clipPath>
  </defs>`}function qy(){let t=a.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function kO(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],l=(s.length?s.map(d=>xO(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return T`<g clip-path="url(#cavity-${t})">${l.map((d,c)=>T`<path class="whole" d=${d} /><path class="${Pr(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?T`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function xO(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function TO(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,l=(n.left+n.right)/2;return T`<g clip-path="url(#cavity-${t})"><rect class=${Pr(t,"pipe")} x=${l-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function RO(){return T`<path class="wall" fill-rule="evenodd" d=${Ey(qy())} />`}function SO(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,l=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return T`
    ${e.pipe?T`<path class=${Pr(t,"pipe")} d=${xm(n,o)} />${t==="pipe"?T`<path fill="url(#dots-pipe)" d=${xm(n,o)} />`:u}`:u}
    ${t==="dust"?AO(e,n,o):u}
    ${o.ball?T`<circle class=${Pr(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>DO(Pr(t,"decorate"),i,d,c,p))}`}function AO(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return T`<path class="powder" d=${t.pipe?xm(e,n):o} />`}function DO(t,e,n,o,i){let[s,l]=[e+n.middle_mm[0],n.middle_mm[2]],d=Ke($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Ke($(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return T`<circle class=${t} cx=${s} cy=${-l} r=${Uy(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=d/2*Math.sqrt(1-_*_),y=c*_+2*b,x=-180/Math.PI*Math.atan2(m,p);return T`<rect class=${t} x=${-y/2} y=${-d/2} width=${y} height=${d} rx=${b} ry=${b?d/2:0}
    transform="translate(${s} ${-l}) rotate(${x})" />`}var Uy=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function Tm(t){let e=(t.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function PO(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return T`${Array.from({length:i-1},(s,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return T`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function OO(t,e){let n=A(gt(a.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${Tm(e)}`.trim()}var FO=t=>`set-up ${t}`;function le({name:t,title:e,drawing:n,result:o,about:i,form:s}){let l=FO(t),d=()=>Oe({part:e,fold:l},s);if(Nn())return r`${d()}`;i.some(([m,_])=>Jt(m,_))&&ut(l);let c=a.open.has(l),p=Wi().filter(({folds:m})=>m.includes(l)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
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
        @click=${()=>Ct("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var kt=t=>r`<p class="order ${a.is_old&&a.plan?"old":""}">${t}</p>`;var zy=()=>k(Bt).length>0,Ky=()=>k(Ce).length>0;function Jy(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function Vy(t){let e=t?k(Bt).flatMap((n,o)=>Yy(t,o)??[]):[];return le({name:"decorate",title:"Decorate",drawing:t&&(()=>To("decorate",t)),result:e.length?e.map(n=>BO(t,n)):kt(Qy(Bt,ko)),about:[["run",Bt.at]],form:()=>r`${t?r`<div class="side">${xo("decorate",t)}</div>`:u}
        <div class="weights">${t?k(Bt).map((n,o)=>MO(t,o)):u}</div>
        ${Zy(Bt,ko,Fy)}`})}var Qy=(t,e)=>`${k(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function MO(t,e){let n=Yy(t,e);return n?CO(t,n,e):u}function Gy(t){let e=t?.dust?.length?k(Ce).map((n,o)=>IO(t,o)):void 0;return le({name:"dust",title:"Dust",drawing:t&&(()=>To("dust",t)),result:e??kt(Qy(Ce,hu)),about:[["run",Ce.at]],form:()=>r`<div class="side">${t?xo("dust",t):u}</div>
        <div class="weights">${t?k(Ce).map((n,o)=>EO(t,o)):u}</div>
        ${Zy(Ce,hu,xy)}`})}var Yy=(t,e)=>Jy(t.decorations,k(Bt),O("run",`/decorations/${e}/name`),e);function Zy(t,e,n){return r`<div class="all-questions">
    ${k(t).map((o,i)=>r`<section class="questions" id=${I(t,i)} aria-labelledby="${I(t,i)}-title">
          <div class="part-head">
            <h3 id="${I(t,i)}-title">${e(i)}</h3>
            ${K(t,i,e(i))}
          </div>
          ${Oe({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function LO(t,e){return r`<h3>${t.name}</h3>
    ${C({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function BO(t,e){if(e.bought)return kt(r`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=A(nt(a.units,ht(e,"make_")));return kt(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${Qt(t.whole)?", for the whole run":""}.`)}function CO(t,e,n){return e.bought?LO(e,n):r`<h3>${e.name} ${Qt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${C({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:nt(a.units,ht(e,"make_")),of:`decorations.${n}.make_g`})}
    ${C({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(e.volume_each_ml,2)} ml`,shown:H(a.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${go(e.casting_s)} of casting.</p>`:u} ${WO(e,n)}`}function WO(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=l=>l===null?"not known":A(gt(a.units,l)),s=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?A(gt(a.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
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
                <dd>${s(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Qo(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function IO(t,e){let n=Xy(t,e);if(!n)return u;let o=$t(t);return kt(r`<b>${A(nt(a.units,ht(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Xy=(t,e)=>Jy(t.dust,k(Ce),O("run",`/dust/${e}/name`),e);function EO(t,e){let n=Xy(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=C({key:`set-up.dust.${e}`,label:n.name,note:$t(t),shown:nt(a.units,ht(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function tv(t){let e=t?.cut;return le({name:"cut",title:"Cut",drawing:t&&(()=>To("cut",t)),result:e?NO(t,e):kt("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>r`${e?jO(t,e):u}
        <div class="all-questions">${ab()}</div>`})}var NO=(t,e)=>kt(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${A(H(a.units,t.piece.fresh_g))} on average, fresh.`);function jO(t,e){return r`<div class="side">${xo("cut",t)}</div>
    <div class="weights">
      ${C({key:"cut.bar",label:"A bar on average, fresh",note:HO(e),shown:H(a.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${C({key:"cut.offcuts",label:"Offcuts",shown:H(a.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${qO(e)}
    </div>`}function HO(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function qO(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function ev(t){return le({name:"label",title:"Label",drawing:zO,result:kt(UO(t)),about:[["run","/label"]],form:()=>r`<div class="more">${Wy()} ${t?om(t):u}</div>`})}function UO(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${A(H(a.units,e,0))}</b>, sold in the ${t.label.market}.`}var zO=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${T`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var zn=t=>h({...t,of:"studio"});function nv(){let t=(e,n,o)=>F({of:"studio",name:`ready ${e}`,pointers:[e],summary:r`<span>${n}<small>${pt("studio",e).join(", ")}</small></span>`,body:o});return r`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${t("/lye_solutions","Lye solutions",QO)} ${t("/blends","Melted blends of fats",ZO)}
    </div>
  </section>`}var KO=["/prices","/packs","/have","/waste"],JO=t=>(e,n)=>KO.reduce((o,i)=>$(o,`${i}/${j(t)}`)===void 0?o:er(o,i,t,n),e);function VO(t,e){let n=i=>i===t?e:Array.isArray(i)?i.map(s=>s===t?e:s):i&&typeof i=="object"&&i.name===t?{...i,name:e}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((s,l)=>{let d=$(s,l);return d===void 0?s:M(s,l,n(d))},i)}function ov({at:t,name:e,label:n,body:o}){let i=(l,d)=>qe([["studio",l],["run",VO(e,d)]]),s=`${t}/${j(e)}`;return r`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${Zo("studio",t,e)}
    </div>
    ${N("studio",s)}
    <div class="row">${tr({of:"studio",at:t,name:e,label:n,also:JO(e),put:i})}</div>
    ${o}
    <div class="row">
      ${zn({label:"Made on",at:`${s}/made_on`,date:!0,optional:!0,short:!0})}
      ${zn({label:"Made by",at:`${s}/from`,optional:!0,short:!0})}
      ${zn({label:"Note",at:`${s}/note`,optional:!0})}
    </div>
  </div>`}var ns="/lye_solutions",QO=()=>r`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${pt("studio",ns).map(t=>ov({at:ns,name:t,label:"What you call it",body:GO(t)}))}
    ${Ni({of:"studio",at:ns,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:t=>ot("studio",`${ns}/${j(t)}/alkali`)})}`;function GO(t){let e=`${ns}/${j(t)}`,n=O("studio",`${e}/alkali`),o=n||"alkali",i=O("studio",`${e}/strength`);return r`${S({of:"studio",question:"Which alkali is dissolved in it?",at:`${e}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:s=>s,then:()=>`${e}/strength`})}
    <div class="row">
      ${zn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${e}/strength`,unit:"%"})}
      ${zn({label:"Coldest it stands",at:`${e}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${YO(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${zn({label:"as weak as",at:`${e}/strength_range/0`,unit:"%",short:!0})}
      ${zn({label:"or as strong as",at:`${e}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${N("studio",`${e}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${ee({of:"studio",at:`${e}/made_from`,name:`what ${t} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>r`<div class="row">
            ${zn({label:`Purity of the dry ${o}`,at:`${e}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function YO(t,e){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(t)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${e} as water is 50 %.`;let i=s=>String(Math.round(s*100)/100);return`So ${i(o)} g of pure ${e} and ${i(100-o)} g of water in 100 g.`}var Or="/blends",ZO=()=>r`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${pt("studio",Or).map(t=>ov({at:Or,name:t,label:"What you call it",body:XO(t)}))}
    ${Ni({of:"studio",at:Or,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:t=>B(`find-blend ${t}`)})}`;function XO(t){let e={of:"studio",at:`${Or}/${j(t)}/fats`,stays:!0},n=k(e),o=i=>n.some(s=>s.fat===i);return r`${N("studio",e.at)}
  ${n.map((i,s)=>r`<div class="row" id=${I(e,s)}>
        ${zn({label:et(String(i.fat)),at:`${e.at}/${s}/share`,unit:"%",short:!0})}
        ${K(e,s,et(String(i.fat)))} ${N("studio",`${e.at}/${s}/fat`)}
      </div>`)}
  ${n.length?r`<p class="total" role="status">
          ${qi("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${li({key:`blend ${t}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:tF(),among:"fats",taken:o,take:i=>U(e,{fat:i,share:""},et(i))})}`}var tF=()=>[...new Set(["pour","pipe"].flatMap(t=>{let e=a.formulas[t]?.now.fats;return Array.isArray(e)?e.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],iv=t=>k({of:"studio",at:`${Or}/${j(t)}/fats`}).map(({fat:e})=>String(e)),os=t=>{let e=g("studio",`${ns}/${j(t)}`)??{},[n,o]=[e.alkali,e.strength].map(i=>String(i??""));return{alkali:n,words:[t,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Fr=t=>`/${t}/lye_from`,Mr=t=>`/${t}/blend`;function Lr(t){let e=pt("studio","/lye_solutions").length>0||g("run",Fr(t))!==void 0,n=pt("studio","/blends").length>0||g("run",Mr(t))!==void 0;if(!e&&!n)return u;let o=[...sv(t),rv(t)].filter(Boolean).join(", ");return F({name:`/${t} ready`,pointers:[Fr(t),Mr(t)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>r`${e?nF(t):u} ${n?iF(t):u}`})}function sv(t){let e=g("run",Fr(t));return typeof e=="string"?[e]:tt("run",Fr(t)).map(String)}var eF=t=>tt(t,"/alkali").map(e=>String($(e,"/alkali")));function nF(t){let e=Fr(t),n=Q("run",e),o=sv(t),i=eF(t),s=[...new Set([...pt("studio","/lye_solutions"),...o])],l=s.filter(m=>o.includes(m)||i.includes(os(m).alkali)),d=s.filter(m=>!l.includes(m)),c=St("run",e),p=m=>{let{alkali:_}=os(m),b=o.includes(m),y=o.filter(Et=>Et!==m&&(b||os(Et).alkali!==_)),x=b?y:[...y,m],G=x.length>1?x:x[0];q("run",`${m}: ${b?"no":"yes"}`,e,G)};return r`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?qt(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>r`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${os(m).words}
          </button>`)}
    </div>
    ${_t(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?r`<p class="hint">Of another alkali than this formula's: ${d.map(m=>os(m).words).join(", ")}.</p>`:u}
  </div>`}var rv=t=>{let e=g("run",Mr(t));return typeof e=="string"?e:O("run",`${Mr(t)}/name`)};function oF(t,e){let n=tt(t,"/fats").map(({fat:s})=>String(s)),o=new Set(n.flatMap(s=>{let l=a.fats.find(({id:d})=>d===s);return l?[l.id,l.name,l.inci,...l.also_called]:[s]})),i=new Set([...o].map(s=>s.toLowerCase()));return iv(e).every(s=>i.has(s.toLowerCase()))}var Rm="\0singly";function iF(t){let e=Mr(t),n=rv(t),o=[...new Set([...pt("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||oF(t,d)),s=o.filter(d=>!i.includes(d)),l=g("run",`${e}/share`)!==void 0;return r`${S({question:"Blend of fats that is weighed",at:e,chosen:n||Rm,answers:[[Rm,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===Rm?void 0:d,hint:s.length?`With fats that this formula has not: ${s.join(", ")}.`:void 0})}
  ${n?l?r`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${e}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:r`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>q("run","Its share",e,{name:n,share:""},ot("run",`${e}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var So="/pour/layers",Ro={at:So,in_order:!0},Sm=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],_u=()=>k(Ro);function sF(){let t=e=>_u().some(n=>e in n);return Sm.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function lv(t){let e=_u(),n=sF();return e.length?r`<h3>
      Layers, lowest first ${t&&$t(t)?r`<small>${$t(t)}</small>`:u}
    </h3>
    ${S({question:"All of them by",at:So,is_told_elsewhere:!0,chosen:n,answers:Sm,puts:o=>aF(o,t)})}
    <div class="items">${e.map((o,i)=>lF(o,i,n,t))}</div>
    ${Z(Ro,"One more layer on top",()=>U(Ro,{name:rF(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Z(Ro,"Pour it in layers",()=>U(Ro,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function rF(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function uv(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function aF(t,e){let n=_u(),o=a.is_old?void 0:e,i=(s,l)=>{let d=uv(o,s,l);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((s,l)=>{let d=gu(l),c=t!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,l)}}})}var gu=t=>ft("run",`${So}/${t}`,[...Sm.map(([e])=>e),"rest"]);function lF(t,e,n,o){let i=`${So}/${e}`,s=String(t.name)||`Layer ${e+1}`,l=uv(o,t,e);return r`<div class="part" id=${I(Ro,e)} role="group" aria-label="Layer ${s}">
    ${l&&o?uF(o,l,e):r`<p class="part-title">${s}</p>`} ${N("run",i)}
    ${cF(t,e,n,s)}
    ${o&&l?l.colours.map((d,c)=>dF(o,d,e,c)):u}
    ${F({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${h({label:"Name of the layer",at:`${i}/name`})} ${hF(i,s)} ${gF(i,e)}
        ${K(Ro,e,s)}`})}
  </div>`}function uF(t,e,n){return C({key:`pour.layer.${n}`,label:e.name,note:`${fc(gt(a.units,e.to_mm-e.from_mm))} thick, ${fc(H(a.units,e.mass_each_g))} each`,shown:e.g_text===void 0?H(a.units,e.g):nt(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function dF(t,e,n,o){return C({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${R(e.teaspoons,1)} tsp`:"",shown:ei(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function cF(t,e,n,o){if(n==="parts")return pF(t,e,o);let i="rest"in t;return r`${i?u:h({label:`${o}, ${n}`,at:`${So}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?fF(e,n):mF(e,n)}
    >
      Takes the rest
    </button>`}function pF(t,e,n){let o=`${So}/${e}/parts`,i=s=>()=>{f({typed:void 0}),X("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function mF(t,e){let n=_u().map((o,i)=>i===t?{...gu(i),rest:!0}:o.rest?{...gu(i),[e]:""}:o);q("run","takes the rest",So,n)}function fF(t,e){let n=`${So}/${t}`;q("run","amount of the layer",n,{...gu(t),[e]:""},ot("run",`${n}/${e}`))}function hF(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${k(n).map((o,i)=>{let s=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${I(n,i)} role="group" aria-label="${l} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${K(n,i,l)}
      </div>
      ${N("run",s)}
      <div class="row">
        ${h({label:"Colour",at:`${s}/name`})}
        ${h({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${bo("run",s,l)}
    </div>`})}
  ${Z(n,"Add a colour",()=>U(n,{name:"",rate:""},"colour"))}`}var av=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function gF(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===k(Ro).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:ee({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${S({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:av,puts:s=>s})}
        ${F({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!av.some(([s])=>s===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var en=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Am(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=en()==="depth"?n-o:o;f({typed:void 0}),X("run",`/pour/line/${en()}`,`${R(i,2)} mm`)}function dv(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Ke($(a.run.now,`/pour/line/${en()}`));return n===void 0?t.pour.below_brim_mm:en()==="depth"?e-n:n}function _F(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=l=>e((l.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,s)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,s)}function $F(t){if(!a.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=dv(t),{share:o,h:i}=Hy(t,e-n),s=c=>_F(c,p=>Am(t,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),Am(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${A(gt(a.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function bF(t){let{pour:e}=t,n=A(gt(a.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=$t(t);return kt(r`${o}, <b>${A(H(a.units,e.mass_each_g))}</b> ${i}; make
      <b>${A(H(a.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var cv=()=>en()==="depth"?"Depth":"Below brim";function pv(t){return le({name:"pour",title:"Pour",drawing:t&&(()=>To("pour",t)),result:t?bF(t):kt(`${wF()}.`),about:[["run","/pour"]],form:()=>r`${t?yF(t):vF()}
        <div class="more">
          ${$u("pour")} ${Lr("pour")} ${lv(t)} ${gl("pour")}
        </div>`})}function wF(){let t=O("run",`/pour/line/${en()}`);return t?`${t} ${en()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function yF(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>Am(t,dv(t)+i);return r`<div class="side">
      ${xo("pour",t,$F(t))} ${mv(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:cv(),at:`/pour/line/${en()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${C({key:"pour.each",label:"Weigh into each",shown:H(a.units,e.mass_each_g),note:`${R(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${C({key:"pour.mm",label:"1 mm more or less",shown:yt(a.units,e.ml_per_mm,2),note:`${Kt(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${C({key:"set-up.pour.make",label:"Base to make",note:$t(t),shown:H(a.units,e.make_g),of:`${n}.make_g`})}
      ${C({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var vF=()=>r`<div class="side">
    ${mv()} ${N("run","/pour/line")}
    ${h({label:cv(),at:`/pour/line/${en()}`,unit:"mm"})}
  </div>`,$u=t=>r`<button type="button" @click=${()=>se(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function mv(t){let e=n=>{if(n===en())return;let o=t&&!a.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;q("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return dt("The pour line is measured",en(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var kF=[0,50,80,100];function fv(t){let e=t?.pipe;return le({name:"pipe",title:"Pipe",drawing:e&&(()=>To("pipe",t)),result:e?xF(t,e):kt("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?TF(t,e):RF()})}function xF(t,e){let n=$t(t);return kt(r`Pipe <b>${R(e.volume_each_ml,0)} ml</b> on each, ${A(H(a.units,e.mass_each_g))} at this
      whipped density; make <b>${A(H(a.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function TF(t,e){return r`<div class="side">
      ${xo("pipe",t)}
      ${C({key:"pipe.each",label:"Topping on each",shown:yt(a.units,e.volume_each_ml),note:`${R(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${C({key:"set-up.pipe.make",label:"Topping to make",note:$t(t),shown:H(a.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${C({key:"pipe.density",label:"Whipped density",note:`overrun ${R(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${$u("pipe")} ${Lr("pipe")}
    </div>
    <div class="weights">${np(e)} ${$v()} ${SF(t)} ${MF(t)}</div>
    <div class="more">${ep(e)} ${tp()}</div>`}var Br=t=>t===0?"pipe":`pipe.whipping${t}`,Cr=(t,e)=>`${t.place}.pipe.whippings.${e}`;function hv(t,e){let n=nl(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function RF(){return r`<div class="more">${ep()}</div>
    <div class="side">${$v()} ${g("run","/pipe/whip_now")===void 0?u:_v()}</div>
    <div class="weights">${np()} ${$u("pipe")} ${Lr("pipe")}</div>
    <div class="more">${tp()}</div>`}var gv=t=>$t(t)?r`<small>${$t(t)}</small>`:u;function SF(t){return r`<h3>Today's bowl ${gv(t)}</h3>
    ${_v()} ${t.whippings.map((e,n)=>AF(t,e,n))}`}function AF(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${hv(t,e)}
  ${o==null?u:C({key:`${Br(n)}.now`,label:"Enough for",note:s,shown:[J(o,"piece"),""],size:"weigh",of:`${Cr(t,n)}.pieces_now`})}
  ${PF(t,e,n)}`}function _v(){let t=g("run","/pipe/whip/holds"),e=t===void 0?ar():{holds:t,net:""};return ee({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:DF})}function DF(){return r`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${lr("/pipe/whip_now")}
  </div>`}function PF(t,e,n){return e.readings?.length?F({name:`${Br(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>OF(t,e,n)}):u}function OF(t,e,n){return r`<table class="readings">
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
    ${Qo(`${Br(n)}.readings`,"Show the calculation",`${Cr(t,n)}.readings`)}`}function $v(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(O("run",t))?.[1]?.replace(",",".")),n=Jt("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${_o("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${kF.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>X("run",t,`${o} %`)}
          >
            ${FF(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function FF(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${T`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function MF(t){let e=t.whippings.map(i=>({one:i,words:LF(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${gv(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${hv(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Qo("pipe.limits","How the limits come about",`${Cr(t,0)}.limits`)}`}function LF({piping_s:t,lye_spoonfuls:e}){return[t?`${go(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${go(e.altogether_s)}`:""].filter(Boolean).join("; ")}function wv(t){return le({name:"lye",title:"Lye",drawing:CF,result:t?bv(t).map(BF):kt("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${bv(t).map(WF)} ${EF(t)}</div>`:u}
        <div class="more">${Ly()} ${By(t)}</div>`})}function bv(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let l=nl(t,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:Cr(t,s),pieces:e,key:Br(s)}});return[n,...o]}function BF({title:t,batter:e,slot:n,pieces:o}){let i=fo(n,o).length?" \u26A0":"";return kt(r`${t}: ${R(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${re(e.superfat_percent.effective)}${i}</b>.`)}var CF=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${T`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function WF({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:l}=n.superfat_percent,d=fo(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${C({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${C({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${re(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${Ks(t,c,i)} ${yv(n.superfat_percent)} ${IF(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:h({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function yv(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,l=`It lies between ${re(e)} and ${re(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${re(o)} and ${re(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return mc(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function IF(t,e,n){return t.heat?r`${vv(t.heat)} ${Qo(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function vv(t){let e=i=>A(K_(a.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?go(i.shortest_min*60):"at once"} to ${go(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return r`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function EF(t){let e=t.lye_pot;if(!e)return u;let{units:n}=a,o=(i,s,l,d,c="")=>C({key:`pot.${i}`,label:s,note:c,shown:l,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(e.strength_percent,1)} %${$t(t)&&`; ${$t(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",nt(n,ht(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,nt(n,ht(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",nt(n,ht(e,"lye_")),"lye_g",NF(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,nt(n,ht(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${re(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,nt(n,ht(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${Ks(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?yv(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${A(nt(a.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?vv(e.heat):u}
  </div>`}function NF(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=ht(t,"lye_"),i=nt(a.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${A(i)} with the pot: make up with water to that after cooling`}var Wr=new Map,jF=()=>Wr.clear(),HF=t=>typeof t?.owned=="number"?t.owned:void 0;function Dm(t){let e=ie(t,a.files?.moulds);return Wr.has(e)||(Wr.set(e,void 0),qF(e)),Wr.get(e)}async function qF(t){try{Wr.set(t,HF(bt((await Nt(t)).text))),Y()}catch(e){if(!(e instanceof w))throw e}}async function kv(t,e){let n=Dm(t);n!==void 0&&(X("studio",e,n),P(`${n} kept in the studio`),await UF(ie(t,a.files?.moulds)),rt())}async function UF(t){let e=await Mt(oe,t);e.shipped||e.theirs||(Lt(e,M(e.now,"/owned",void 0)),await an(e),jF())}var bu=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],wu=t=>t[0].toUpperCase()+t.slice(1),yu=t=>h({...t,of:"studio"});function xv(){return!Nn()&&a.run.file&&a.open.has("folded studio days")&&Nl("run"),r`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${F({of:"studio",name:"days",pointers:["/days",...Xe()?[]:["/work"]],summary:r`<span>When you work${r`<small>${zF()}</small>`}</span>`,body:KF})}
  </section>`}function zF(){let t=g("studio","/days/making")??{};return bu.filter(e=>t[e]).map(e=>`${wu(e)} ${String(t[e])}`).join(", ")}var KF=()=>r`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${bu.map(t=>yu({label:wu(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${N("studio","/days")} ${N("studio","/days/making")} ${JF()} ${VF()} ${GF()}
    ${Xe()?r`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:r`<p class="question">How long the work takes you</p>
            <div class="row">${jl(g("studio","/days")!==void 0)}</div>
            ${N("studio","/work")}`}`;function JF(){let t="/days/small_jobs",e=Q("studio",t),n=tt("studio",t),o=l=>{let d=bu.filter(p=>p===l!==n.includes(p)),c=p=>jn(M(p,t,d.length?[...d]:void 0),"/days");_e("studio",`${wu(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Jt("studio",t),s=bu.filter(l=>n.includes(l)||!O("studio",`/days/making/${l}`));return r`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${s.map(l=>r`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${wu(l)}
          </button>`)}
    </div>
    ${_t(e,i,"Without any, these wait for a making day.")}
  </div>`}var Ir={of:"studio",at:"/days/off",and:t=>jn(t,"/days")};function VF(){return r`<p class="question">Days off and holidays</p>
    ${k(Ir).map((t,e)=>QF(String(t),e))}
    ${Z(Ir,"Add a day off",()=>U(Ir,"","A day off"))}`}function QF(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),s=Q("studio",n),l=St("studio",n),d=(m,_)=>X("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,y)=>r`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${D(b)}
        @input=${x=>y(x.target.value)}
        @blur=${Yo}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${s}-said`:u}
      />
      ${m===s?_t(s,l):u}
    </div>`,p=o?`off on ${E(o)}`:`day off ${e+1}`;return r`<div class="row" id=${I(Ir,e)} role="group" aria-label=${p}>
    ${c(s,"First day off",o,m=>d(m,i))}
    ${c(`${s}-last`,"Last, if there are several",i,m=>d(o,m))} ${K(Ir,e,p)}
  </div>`}function GF(){let t=(e,n,o)=>yu({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return r`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${yu({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${YF()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?r`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var YF=()=>ee({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let t=(e,n,o,i={})=>yu({label:n,at:`/days/one_lye_a_day/${e}`,unit:o,short:!0,...i});return r`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${t("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${t("saves","Each further batch takes less by","min")}
          ${t("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var ZF={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},Tv=t=>({run:t,studio:t}),Pm=t=>Tv(`/losses/${t}`);function Om(t,e){return ZF[t].map(({name:n,label:o,unit:i,optional:s})=>Wt(Tv(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var Fm={holds:"",paid:""},vu=t=>({of:"studio",at:`/packs/${j(t)}`,in_order:!0,and:(e,n)=>n?e:Ei(jn(e,"/packs"),[`/serves_as/${j(t)}`])});function Sv(t){let e=a.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function Av(t,e){let n=new Set(Sv(e).map(o=>o.toLowerCase()));return pt("studio",t).find(o=>n.has(o.toLowerCase()))}var ui=t=>Av("/packs",t),Dv=t=>We().includes(t)||a.fats.some(e=>e.id===t)?"g":void 0,Pv="money packs";function Ov(t){return r`${pt("studio","/packs").map(e=>XF(e,t))}
  ${li({key:"pack",label:"Which material comes in packs?",offers:We(),taken:e=>ui(e)!==void 0,take:ku})}`}function XF(t,e){let n=vu(t),o=et(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,s)=>eM(n,s,o,Dv(t),e))}
    <div class="row">
      ${Z(n,r`Another pack of ${o}`,()=>U(n,Fm,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${j(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${tM(t)}
    </div>
  </div>`}var Rv=t=>`/serves_as/${j(t)}`;function tM(t){let e=Rv(t),n=O("studio",e),o=new Set(Sv(t)),i=[...new Set([...We(),...pt("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",Rv(l))===void 0),s=l=>d=>jn(M(d,e,l||void 0),"/serves_as");return!n&&(We().some(l=>o.has(l))||!i.length)?u:vt({label:"Another make of",of:"studio",at:e,answers:i.map(l=>[l,et(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>_e("studio",`${et(t)}: ${l?et(l):"a material of its own"}`,s(l))})}function eM(t,e,n,o,i){let s=`${t.at}/${e}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Jt("studio",`${s}/holds`);return r`<div class="row" id=${I(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${nM(s)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${K(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function nM(t){let e=`${t}/from`,n=pt("studio","/sellers");return n.length?vt({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:e,optional:!0,short:!0})}function ku(t){let e=`/packs/${j(t)}`,[n,o]=[`/prices/${j(t)}`,`/money/prices/${j(t)}`],i=Vi().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(iM),l=s.length?[...s,Fm]:[Fm];qe([["studio",c=>oM(M(Ei(c,[n]),e,l))],...i!==void 0?[["run",c=>Ei(c,[o])]]:[]]),P(s.length?`The price of ${et(t)} is its first pack now`:`${et(t)} added`),Vt("studio",Pv),W(Ve(I(vu(t),l.length-1)))}var oM=t=>$(t,"/currency")?t:M(t,"/currency",zl());function iM(t){let e=$(t,"/paid");if(!e)return[];let n=$(t,"/confirmed");return[{holds:$(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var Fv=t=>r`<button
    type="button"
    aria-label="Another pack size of ${et(t)}"
    @click=${()=>ku(t)}
  >
    Another pack size
  </button>`;function Mv(t){let e=ui(t),n=tt("studio",vu(e).at).length,o=()=>{Vt("studio",Pv),W(Ve(I(vu(e),0)))};return r`<div class="row">
    <p>${et(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${et(t)}" @click=${o}>To its packs</button>
  </div>`}function Lv(){let t=e=>`/have/${j(e)}`;return r`${pt("studio","/have").map(e=>{let n=Dv(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${h({of:"studio",label:et(e),at:t(e),unit:n,hint:o,short:!0})}
      ${Zo("studio","/have",e,et(e))}
    </div>`})}
  ${li({key:"have",label:"Which material stands on the shelf?",offers:We(),taken:e=>Av("/have",e)!==void 0,take:e=>q("studio",`${et(e)} added`,t(e),"",ot("studio",t(e)))})}`}var Bv=({key:t})=>`money ${t}`;function Iv(){if(!Xe())return u;let t=rM(zl());return!Nn()&&t.some(e=>a.open.has(`folded studio ${Bv(e)}`))&&Bl(),r`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${sM()}
    <div class="folds">
      ${t.map(e=>F({of:"studio",name:Bv(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var sM=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${di({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,di=t=>h({...t,of:"studio"}),xu=t=>pt("studio",t).map(et).join(", ");function rM(t){let e=(i,s,l={})=>di({label:s,at:i,told:t,short:!0,...l}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let l=O("studio",i);return l&&`${l}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:xu("/packs"),body:()=>Ov(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:xu("/sellers"),body:()=>lM(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:xu("/have"),body:Lv},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(is).map(i=>et(String($(i,"/material")))).join(", "),body:dM},{key:"work",title:"Work",pointers:["/work"],told:o(oi("paid_an_hour"),` ${t} an hour`),body:()=>pM(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:mM},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${di({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:xu("/asking"),body:()=>fM(e)}]}var aM=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,s])=>s.reduce((l,{from:d},c)=>d===t?M(l,`/packs/${j(i)}/${c}/from`,n):l,o),e);function lM(t){let e=(n,o)=>`/sellers/${j(n)}/${o}`;return r`${pt("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${Zo("studio","/sellers",n)}
        </div>
        <div class="row">
          ${tr({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:aM(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${di({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Ni({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>ot("studio",e(n,"postage"))})}`}var is={of:"studio",at:"/packaging"},uM=t=>!We().includes(t)&&!a.fats.some(e=>e.id===t);function dM(){let t=e=>k(is).some(n=>$(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(is).map((e,n)=>cM(String($(e,"/material")??""),n))}
    ${li({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>pt("studio",e)).filter(uM),taken:t,take:e=>U(is,{material:e,each_piece:""},e)})}`}function cM(t,e){let n=ui(t)!==void 0||g("studio",`/prices/${j(t)}`)!==void 0;return r`<div class="row" id=${I(is,e)}>
    ${di({label:`${et(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>ku(t)}>
            Say its price
          </button>`}
    ${K(is,e,t)}
  </div>`}function pM(t){let e=g("studio","/work")!==void 0;return r`<div class="row">
      ${t(oi("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${jl()}
    </div>
    ${N("studio","/work")}`}var Cv=(t,e)=>S({of:"studio",question:t,at:`/tax/${e}`,chosen:O("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),mM=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${ee({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${di({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${Cv("The prices you pay are","prices_paid")} ${Cv("The prices you ask are","prices_asked")}`})}`,Wv=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function fM(t){let e=n=>`/asking/${j(n)}`;return r`${pt("studio","/asking").map(n=>hM(n,e(n),t))}
  ${Ni({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>ot("studio",e(n))})}
  ${gM(t)}`}function hM(t,e,n){let o=g("studio",e)??{},i=Wv.map(([l])=>l).find(l=>o[l]!==void 0),s=l=>di({label:l,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${Zo("studio","/asking",t)}
    </div>
    <div class="row">${tr({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${S({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:Wv,puts:l=>({[l]:""}),then:l=>`${e}/${l}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Er={of:"studio",at:"/price_endings"},gM=t=>r`<p class="question">A price ends in</p>
    ${k(Er).map((e,n)=>r`<div class="row" id=${I(Er,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${K(Er,n,`ending ${n+1}`)}
        </div>`)}
    ${Z(Er,"Add an ending",()=>U(Er,"","An ending"))}`;var _M=t=>at()&&ui(t)===void 0&&Vi().length>0;function Ev(){if(!Xe())return r`<button type="button" @click=${$M}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${j(e)}/${n}`;return{run:Ul.run+o,studio:Ul.studio+o}};return r`<div class="row">
      ${Wt(vn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${We().map(e=>ui(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${Wt(t(e,"paid"),{label:`${et(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Wt(t(e,"for"),{label:`for how much ${et(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${_M(e)&&mn(t(e,"paid"))?Fv(e):u}
            </div>`:Mv(e))}
    </div>
    ${We().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function $M(){let t=at()?"studio":"run",e=t==="studio"?vn.studio:vn.run;q(t,"Prices added",e,"",ot(t,e))}var ss=t=>({run:t,studio:t}),Mm=t=>({run:`/pipe/${t}`,studio:`/${t}`}),bM=ss("/scales"),Nv=ss("/spoilage"),wM=ss("/pots");function Lm(t){return le({name:"studio",title:"My studio",result:kt(yM()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>vM(t)})}function yM(){let t=a.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function vM(t){let e=kM(t),n=[...e.flatMap(o=>o.all),...ae()?[$l]:[]];return r`${at()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{xc(n)}}>
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
              ${$o(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${at()?r`${Iv()} ${nv()} ${xv()}`:u}`}function kM(t){let e=$e(),n=[{title:"Scales",all:[bM],body:xM},{title:"Losses",all:[Pm("pour"),...e?[Pm("pipe")]:[]],body:()=>TM(e,t)},{title:"Rejects",all:[Nv],body:SM},{title:"Pot and lye jug",all:[wM],body:AM},{title:"Moulds owned",all:jv().map(({shared:o})=>o),body:PM},{title:"Prices paid",all:Vi(),body:Ev}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Mm),body:DM},{title:"Weigh-cups",all:[],body:X$}),at()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[es],body:km}),n}function xM(){let t=(e,n)=>r`${Wt(ss(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${Wt(ss(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function TM(t,e){return r`<div class="row">
      ${Om("pour",t?"Base":void 0)} ${t?Om("pipe","Topping"):u}
    </div>
    ${e?RM(e):u}`}function RM({pour:t,pipe:e,...n}){let o=$t({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:l,lost_g:d})=>`${s}: ${A(H(a.units,l))} in the pieces, ${A(H(a.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var SM=()=>Wt(Nv,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function AM(){let t=(e,n,o)=>Wt(ss(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function DM(){let t=(n,o,i,s=!1)=>Wt(Mm(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>mn(Mm(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function jv(){return["/pour",...k(Bt).map((e,n)=>Xi(n))].flatMap(e=>{let n=O("run",`${e}/mould`);return n?[{mould:n,shared:{run:yy(e),studio:`/moulds_owned/${j(Tc(n))}`}}]:[]})}function PM(){return r`<div class="row">
    ${jv().map(({mould:t,shared:e})=>{let n=a.files?.moulds.find(s=>s.file===t)?.name??t,o=mn(e)===void 0?Dm(t):void 0,i=()=>{kv(t,`/moulds_owned/${j(Tc(t))}`)};return r`${Wt(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&at()?r`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Bm(t){let e=t&&ji(t);return r`${FM(t)}
    <div class="set-up">${Hv(e)} ${OM()} ${Lm(e)}</div>`}function Hv(t){return r`${pv(t)} ${$e()?fv(t):u}
  ${zy()?Vy(t):u} ${Ky()?Gy(t):u}
  ${ae()?tv(t):u} ${wv(t)} ${vm()?ev(t?.whole):u}`}function OM(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${$e()?u:r`<button type="button" @click=${tb}>Add a topping</button>${eb()}`}
      ${Oy()} ${rb()}
      ${vm()?u:r`<button type="button" @click=${Cy}>Draft the label</button>`}
    </div>
  </section>`}function qv(t=u){return r`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${Ii("Mould","/pour/mould",a.files?.moulds)}
    ${Ii("Base","/pour/formula",a.files?.formulas)}
    ${$e()?Ii("Topping","/pipe/formula",a.files?.formulas):u} ${t}
  </div>`}function FM(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?r`<p class="aside">${a.run.now.note}</p>`:u}
    ${qv(t?MM(t):u)}
    <div class="batches">${t?Iy(t):u} ${$m()} ${wm()}</div>
  </section>`}function MM(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:l}=t.pieces,d=Qt(t)?`${l} batches, ${J(o,"filling")}`:ol(o,i);return C({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function LM(){let e=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(BM);return[Oe({part:"Run"},()=>[qv(),$m(),wm()]),...e.map(n=>Oe({part:String(a.formulas[n].now.name||"Formula")},()=>qb(n))),Hv(),Lm()]}var BM=(t,e,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[t])===e;t$(LM);var CM={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Uv(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(l=>r`<li class=${l.severity}><strong>${CM[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}var Cm="begin-title";function zv(t){let{record:e}=a;if(e.run!==a.run.file||e.version===void 0)return u;let{number:n,since:o}=t,i=o===void 0?void 0:Jo(n,o);if(i)return WM(i,t);if(e.beginning?.batch===n)return IM(e.beginning,t);let s=()=>{sy(n),W(B(Cm)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))};return r`<div class="begin-record">
    <button type="button" class=${t.is_due?"strong":""} @click=${s}>Lye is mixed: begin the record</button>
  </div>`}function WM(t,{show:e}){let{told:n}=a.record,o=()=>{Ko(t.begun.id),e()};return r`<div class="begin-record is-begun">
    ${pu(t)}
    <button type="button" class="strong" @click=${o}>Note what happens</button>
    ${n?.batch===t.begun.id&&n.remarks.length?r`<ul class="begin-remarks" role="status">
            ${n.remarks.map(i=>r`<li>${i}</li>`)}
          </ul>`:u}
  </div>`}function IM(t,e){let{number:n,words:o,seen:i,is_struck:s}=e,l=Jo(n),{complaint:d,is_asking:c}=t,p=!s&&!c&&!eo(n);return r`<div class="begin-record asked" role="group" aria-labelledby=${Cm}>
    <p id=${Cm} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?EM(l,e):u}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">Code on the mould</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${D(t.code)}
          aria-describedby="code-to-begin-said"
          @input=${m=>ry(m.target.value)}
        />
        <p class="hint" id="code-to-begin-said">Left blank: the day and the next letter.</p>
      </div>
      <button type="button" class="strong" ?disabled=${!p} @click=${()=>{lm(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${am}>Not yet</button>
    </div>
    ${s?r`<p class="complaint">The weights are not those of what is typed.</p>`:u}
    ${d?NM(d,i):u}
  </div>`}var EM=(t,{show:e})=>r`<p>
      There is a record of it already, <b>${t.begun.code}</b>: ${Rr(t)}. If this is the same soap, go on
      in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{am(),Ko(t.begun.id),e()}}
      >
        Go on in ${t.begun.code}
      </button>
    </p>`;function NM(t,e){let n=t.choices??[];return r`<div role="alert">
    <p class="alarm">
      ${n.length||t.field==="begin"?`${t.problem}.`:`${L(t)}.`}
    </p>
    ${n.map(o=>r`<button type="button" class="answer" @click=${()=>{ay(o,e)}}>
          ${jM(o)}
        </button>`)}
  </div>`}function jM(t){let{confirmed:e,lot:n}=t;return t["beyond-stock"]?`There is more than the records say: take it of lot ${t["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${e??""}`}function Kv(t,e){let n=t?.batches.findIndex(({numbers:l})=>l.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function rs(t){let e=to(t);return e?.finished_at?"done":e||eo(t)?"under way":"not begun"}var HM=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:t})=>t));function qM(t){let{chosen:e}=a.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>rs(s)===i);return o("under way")??o("not begun")??1}function Wm(){let t=HM(),e=qM(t),n=to(e),o=Kv(a.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?Kv(n.plan,e):o}}var kn=({kept:t})=>!t&&a.is_old,as=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var UM=6,zM={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Vv({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${rs(i)}`;return e>UM?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>Jv(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:dt("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${zM[rs(i)]}</span> ${i}<small>
          ${rs(i)}</small
        >`]),i=>Jv(Number(i)))}function Jv(t){ag(t),P(`Batch ${t}, ${rs(t)}`)}var Tu="";function Qv(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return KM(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!no(n,l).is_done).length,s=()=>i?Gv(e.id):void kd(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Zv(e.begun_at)}; its weights stay as they were then.</p>
    ${Tu===e.id?Yv(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{kd(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${eo(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function KM({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Zv(n)}.</p>
    ${Tu===o?Yv("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Ps(e)}):r`<button type="button" @click=${()=>Gv(o)}>Start this batch anew</button>`}
  </div>`}function Gv(t){Tu=t,Y(),W(B("batch-stays"))}function Yv(t,e,n){let o=()=>{Tu="",Y(),W(B("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var JM=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Zv=t=>JM.format(new Date(t));var VM={pour:"Base",pipe:"Topping"},Xv=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function tk(t,e){let[n,o]=[Xv(t),Xv(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,l=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${VM[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var Im=3,Em=new Map,Nm="";function QM(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=a;if(s&&!rf(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:L(s)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=tk(n.vessels,o.vessels),d=new Set(as(n).map(({text:p})=>p)),c=as(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function ek(t){let e=QM(t),{kept:n}=t;if(!e||!n)return u;if(Em.get(n.id)===e.mark)return ZM(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${GM(e)}
    </p>
    ${YM(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${he}</strong> As it is now: ${i}</p>`)}
    ${Nm===n.id?eL(t):XM(t,e)}
  </div>`}function GM({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Im;return r`${t.slice(0,Im).join("; ")}${n>0?` and ${n} more.`:"."}`}var YM=({told:t})=>t.length>Im?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function ZM(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Em.delete(t),Y())}>What has changed</button>
  </div>`}function XM(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Em.set(o,e),Y(),W(B("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>tL(t)}>Start this batch anew</button>`:u}
  </div>`}function tL(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Ps(t.number);Nm=o,Y(),W(B("keep-weighing"))}function eL(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Nm="",Y(),W(B("run-title"))},o=()=>{n(),Ps(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var nk=({text:t})=>r`<p class="danger"><strong>${he}</strong> ${t}</p>`;function ok(t){let e=new Set(a.dangers.run.map(({text:o})=>o)),n=as(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(nk)}</div>`:u}var nL=({vessel:t})=>["lye","lye_pot","share"].includes(t),oL=({batter:t},e)=>!t||!e.batter||t===e.batter;function ik(t,e){if(!nL(e))return u;let n=as(t).filter(o=>oL(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${nk(o)} ${iL(o)}`)}</div>`:u}function iL({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${rL}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>sL(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function sL(t){se(t),requestAnimationFrame(()=>W(ot(t,"/superfat")))}function rL(){f({view:"watch"}),W(B("watch-title"))}var jm=(t,e)=>r`<p class="do ${kn(t)?"old":""}">${e}</p>`;function sk(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${A(gt(a.units,o))} below the brim`;return jm(t,r`${s}, <b>${A(H(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function rk(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?jm(t,r`Whip until the level weigh-cup holds <b>${A(H(a.units,n.net_g))}</b>.`):u}function ak(t,{batch:e}){let{pipe:n}=e;return n?jm(t,r`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${A(H(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function lk(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Pe(n)===o?n:e,""]}function uk(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return lL(t,e,n);let o=aL(t,e,n);return o===void 0?void 0:{place:o}}function aL({batch:t,plan:e,place:n,vessels:o},i,s){switch(i.vessel){case"fats":case"lye":case"batter":return ck(i,s,t,n);case"layers":return dL(s,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Hm(s.name,t.dust,`${n}.dust`);case"lye_pot":return s.role==="water"||s.role==="ice"?`${n}.lye_pot.water_g`:Hm(s.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===e.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return uL(i,s,t,n)}}function lL({vessels:t},e,n){let o=t.find(s=>s.vessel==="lye"&&s.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:s,shown:l})=>({name:s,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var dk=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function uL(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,dk(t)),s=t.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${s}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${s}.top_up_g`:ck(t,e,n,o,"lye")}function Hm(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function ck(t,e,n,o,i=t.vessel){let s=dk(t),[l,d]=t.batter==="pipe"?[n.pipe?.whippings[s],`${o}.pipe.whippings.${s}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function dL(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Hm(t.name,e[o].colours,`${n}.${o}.colours`)}function qm(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>no(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${pk(n)}>
    <div class="vessel-head">
      <h3 id=${pk(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${ik(e,n)}
    ${rl(n.rows,({key:s})=>s,s=>cL(t,e,n,s))}
  </section>`}var pk=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function cL(t,e,n,o){let{is_done:i,is_waiting:s}=no(t.number,o.key),[l,d]=lk(a.units,o),c=kn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${D(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>pL(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${mL(t,e,n,o)}
  </div>`}function pL(t,{mark:e},n,o){if(!kn(t))return ig(t.number,e,n.key,o.checked);o.checked=!o.checked,P("Not ticked: what is struck through is not to be weighed.")}function mL(t,e,n,o){let{planned:i}=t,s=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&s&&uk(i,s,o);if(!l)return u;let d=`weigh.${t.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ct("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${p}>${"place"in l?$c(l.place):Qa(l.working)}</div>`:u}`}function Um(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function mk(t,e){let{planned:n,whip_today:o}=a;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||fL(t,e),o?.batch===t&&o.reading===e?o:void 0)}var zm=!1;async function fL(t,e){let{planned:n}=a;if(zm||!n)return;zm=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Ur({...n,run:M(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...hL(s,t)}})}catch(s){if(!(s instanceof w))throw s;f({whip_today:{...o,complaint:L(s.complaint)}})}finally{zm=!1}}function hL(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Jm,Km,gL=t=>Jm??(Pe(t)==="oz"||!t&&a.units==="us"?"oz":"g");function fk(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=qo(t.number),i=gL(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${En("weigh_cup")}</div>
    ${Je("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${D(Km??o)}
        ?disabled=${s}
        @input=${l=>Km=l.target.value}
        @change=${l=>$L(t,e,l.target.value,i)}
      />
      ${dt("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],_L)}
    </div>
    ${bL(t,e,n,o)} ${yL(e,n)}
  </div>`}function _L(t){Jm=t,Y()}function $L(t,{mark:e},n,o){Km=void 0;let i=Rt(n)?`${n.trim()} ${o}`:n.trim();if(Jm=void 0,i===qo(t.number))return Y();if(kn(t))return P("Not taken: the weights are not those of what is typed."),Y();sg(t.number,e,i),t.kept&&Fa(Jo(t.number,t.kept.begun_at),i)}function bL(t,e,n,o){if(!o)return u;let i=mk(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,l)=>r`<p>${wL(s,i.pieces?.[l]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function wL({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${J(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function yL(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
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
                  <th scope="row">${A(H(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Nr="pour",hk=()=>Wm().kept!==void 0;function gk(t){ma(),uo();let e=Wm(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return r`<section class="weighing" data-part=${Nr} aria-labelledby="run-title">
    ${vL(e)} ${xL(e)}
    ${e.weights&&n?r`${ok(e.weights)} ${ek(e)} ${TL(e,e.weights,t)}`:u}
    ${e.weights&&n&&!Vm(e)?$k(e,e.weights,t):u}
    ${Qv(e)}
  </section>`}function vL(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(a.run.now.name??"")}</h1>
    ${e?r`<p class="which">${kL(t,e)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Vv(t)}
    </div>
  </div>`}function kL(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>no(t.number,d).is_done).length,l=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${l}${Ye(e,n)}</b>, ${s} of ${i.length} weighed`}function xL({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:l}=a.bench,d=o!==void 0&&eo(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${lg}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function TL(t,e,n){let{vessels:o}=e,i=m=>o.filter(_=>_.batter===m),s=i(),l=s.filter(m=>m.day_before),d=s.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>qm(t,e,_));return r`${OL(c,s)}
    <div class="batters ${c?"two":""}">
      ${Ru("ahead","To have ready",p(l))}
      ${Ru("base",c?"Base":"Batter",RL(t,e,i("pour"),l,n))}
      ${c?Ru("topping","Topping",[...p(i("pipe")),DL(t,e),Um(i("pipe"),AL(t,e))]):u}
      ${Ru("after","At the end",p(d))}
    </div>`}var _k=({vessel:t})=>t==="lye"||t==="lye_pot";function Vm(t){let n=(t.weights?.vessels??[]).filter(o=>_k(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>no(t.number,o).is_done)}var $k=(t,{plan:e,batch:n,mark:o},i)=>zv({number:t.number,words:`${t.of>1?`batch ${t.number} of ${t.of}`:"this batch"}, ${Ye(e,n)}`,seen:o,since:t.kept?.begun_at,is_struck:kn(t),is_due:Vm(t),show:i}),Ru=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function RL(t,e,n,o,i){let s=({vessel:p})=>p==="layers",l=p=>p.map(m=>qm(t,e,m)),d=n.filter(p=>!s(p)),c=d.map(_k).lastIndexOf(!0);return[...l(d.slice(0,c+1)),Vm(t)?$k(t,e,i):u,...l(d.slice(c+1)),sk(t,e),...l(n.filter(s)),Um([...o,...n],SL(t,e))]}var bk=(t,e,n=u)=>r`<p class=${kn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>re(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,SL=(t,{batch:e})=>bk(t,[e.pour],_o("superfat_as_weighed")),AL=(t,{batch:e})=>bk(t,e.pipe?.whippings??[]),DL=(t,e)=>r`${rk(t,e)} ${fk(t,e)} ${ak(t,e)}`,PL={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function OL(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>PL[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Nr)||(Nr="pour"),r`<div class="narrow">${dt("What is shown",Nr,o,FL)}</div>`)}function FL(t){Nr=t,Y(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var wk=()=>r`${ni(hk()?"No new weights can be given.":void 0)} ${gk(()=>{Yt("record")})}`;var ML={"set-up":Bm,watch:Uv,money:Qw,days:Lw,mould:_y,print:wy};function yk(t){let e=r`${ua().map(o=>hn(o))} ${la().map(gn)}`;if(t==="weigh")return r`${e} ${wk()}`;if(t==="record")return r`${e}
    ${py({to_weights:()=>{Yt("weigh")},to_learned:()=>{Yt("learned")}})}`;if(t==="learned")return r`${e} ${ni()} ${Kw()}`;let{plan:n}=a;return r`${e} ${ni()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?ML[t](n):LL(t)}`}function LL(t){return a.complaint?t==="set-up"?Bm():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var BL=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function kk(){let t=a.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${BL}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=bl(t.sell),s=e.trim()&&n&&o&&i,l=()=>{ct(async()=>{await Na({name:e.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${D(e)}
          @input=${d=>v(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${vk(t,"mould","Mould",CL())} ${vk(t,"formula","Base",WL())}
      ${wl("new-run-sell",t.sell,d=>v(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var CL=()=>[...(a.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...a.catalogue.map(t=>[t.path,t.name])],WL=()=>(a.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function vk(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(t,{[e]:l.target.value})}>
      <option value="" .selected=${D(t[e]==="")}>choose ...</option>
      ${o.map(([l,d])=>r`<option value=${l} .selected=${D(l===t[e])}>${d}</option>`)}
    </select>
  </div>`}var IL=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function Tk(){let t=a.files?.runs??[],e=t.filter(o=>!o.shipped).sort(IL),n=t.filter(o=>o.shipped);return r`${Le("Runs")} ${kk()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Ze(e,xk):r`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Ze(n,xk)}
    </section>
    ${Be("run")}`}function xk(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,l=[e===void 0?"":J(e,"piece"),n??"",o?`due ${E(o)}`:"",i?`made ${E(i)}`:s?`changed ${E(s)}`:""].filter(Boolean);return _n({kind:Lo,one:t,facts:l,picture:EL(n),open:()=>Cn(t.file)})}var EL=t=>a.files?.moulds.find(e=>e.name===t)?.file??a.catalogue.find(e=>e.name===t)?.path;var ci=({material:t,lot:e})=>`${t}:${e}`,Rk=(t,e)=>t.material===e.material&&t.lot.toLowerCase()===e.lot.toLowerCase(),Sk=(t,{lots:e})=>e.filter(n=>Rk(n,t));function Qm(t){return t[0]?.left.pieces!==void 0?{pieces:t.reduce((n,{left:o})=>n+(o.pieces??0),0)}:{g:Number(t.reduce((n,{left:o})=>n+(o.g??0),0).toFixed(6))}}function Ak(t,{kind:e,of:n}){if(e==="counted"){let i=t?.materials.flatMap(l=>l.lots)??[],s=i.find(l=>ci(l).toLowerCase()===n.toLowerCase());return s?Qm(i.filter(l=>Rk(l,s))):{g:0}}return{pieces:t?.pieces.find(({batch:i})=>i===n)?.there??0}}var ls=({kind:t,of:e},n)=>`shelf-${`${t}-${e}-${n}`.replaceAll(/[^\w]+/g,"-")}`,Ym=({complaint:t},e)=>t&&t.field===e&&!t.asks?L(t):void 0;function Ft(t,{name:e,label:n,kind:o,number:i,count:s,hint:l}){let d=ls(t,e),c=Ym(t,e),p=c??l;return r`<div class="field ${c?"wants":""}">
    <label for=${d}>${n}</label>
    <input
      id=${d}
      type=${o??"text"}
      inputmode=${s?"numeric":i?"decimal":u}
      autocomplete="off"
      spellcheck="false"
      .value=${D(t.typed[e]??"")}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${p?`${d}-said`:u}
      @input=${m=>ze(t,{typed:{[e]:m.target.value}})}
    />
    ${p?r`<p id="${d}-said" class=${c?"complaint":"hint"}>${p}</p>`:u}
  </div>`}var Zt=({typed:t},e)=>t[e]?.trim()||void 0;function Su(t,e,n,o){let i=(t.typed[e]??"").trim().toLowerCase(),s=i.split(/\s+/),l=o.filter(c=>s.every(p=>c.toLowerCase().includes(p)));return o.some(c=>c.toLowerCase()===i)||!l.length?u:r`<div class="choice" role="group" aria-label=${n}>
      ${l.slice(0,Gm).map(c=>r`<button type="button" @click=${()=>ze(t,{typed:{[e]:c}})}>${c}</button>`)}
    </div>
    ${l.length>Gm?r`<p class="hint">${l.length-Gm} more: type a part of the name.</p>`:u}`}var Gm=8;var us=({kind:t,of:e})=>`shelf-form-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`;function ds(t){let{form:e,title:n,act_words:o,fields:i}=t,s=us(e),l=()=>{tc(e),W(NL(e))};return r`<form
    class="shelf-act"
    aria-labelledby=${s}
    @submit=${d=>{d.preventDefault(),Ok(t)}}
  >
    <p class="part-title" id=${s} tabindex="-1">${n}</p>
    ${i} ${jL(t)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${e.is_asking}>
        ${e.is_asking?"Recording ...":o}
      </button>
      <button type="button" @click=${l}>Leave it</button>
    </div>
  </form>`}var NL=({kind:t,of:e})=>B(`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`),Dk=(t,e)=>`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`,Pk="shelf-told";async function Ok({form:t,act:e,names:n}){let o=e();if(o&&await La(t,o))return W(B(Pk));let i=Bn(t)?.complaint;i&&W(B(n.includes(i.field)&&!i.asks?ls(t,i.field):`${us(t)}-said`))}function jL(t){let{form:e,names:n}=t,{complaint:o}=e;if(!o||n.includes(o.field)&&!o.asks)return u;let i=o.choices?.find(({confirmed:l})=>l!==void 0)?.confirmed,s=l=>()=>{l(),Ok(t)};return r`<div role="alert">
    <p class="alarm" id="${us(e)}-said" tabindex="-1">${Ot(L(o))}</p>
    ${i===void 0?u:r`<button type="button" class="answer" @click=${s(()=>Yg(e,i))}>It is so</button>`}
    ${o.asks==="seen"?r`<button type="button" class="answer" @click=${s(()=>Zg(e,Ak(a.stock.list,e)))}>
            Record it even so
          </button>`:u}
  </div>`}function cs(t){let{told:e}=a.stock;return e?.of!==t?u:r`<div class="told" id=${Pk} tabindex="-1">
    <div>${e.sentences.map(n=>r`<p>${Ot(n)}</p>`)}</div>
  </div>`}var HL={metric:["g","kg"],us:["oz","lb"],both:["g","kg","oz","lb"]},qL={metric:["ml","l"],us:["fl oz"],both:["ml","l","fl oz"]};function Zm(t){let e=[...HL[a.units],...qL[a.units]];return t==="pieces"?["pieces"]:t==="mass"?e:[...e,"pieces"]}var Fk=(t,e,n)=>t.typed[`${e}-unit`]??(n==="pieces"?"pieces":void 0);function Au(t,e,n,o){let i=Zm(o),s=Mk(t.typed[e])?void 0:Fk(t,e,o);return r`<div class="amount-asked">
    ${Ft(t,{name:e,label:n,number:!0})}
    <div class="choice" role="group" aria-label="Unit: ${n}">
      ${i.map(l=>r`<button
            type="button"
            aria-pressed=${l===s?"true":"false"}
            @click=${()=>ze(t,{typed:{[`${e}-unit`]:l}})}
          >
            ${l}
          </button>`)}
    </div>
  </div>`}var Mk=(t="")=>t.trim()!==""&&!Rt(t);function Du(t,e,n){let o=(t.typed[e]??"").trim();if(!o)return void Vo(t,e,"How much is it?");if(Mk(o))return o;let i=Fk(t,e,n);return i?`${o} ${i}`:void Vo(t,e,"In which unit?")}var Pu=()=>a.stock.list?.names,Ck=(t,e)=>r`${Ft(t,{name:"on",label:e,kind:"date"})}
  ${Ft(t,{name:"best-before",label:"Best before, if it says so",kind:"date"})}`;function Wk(t){let e=Pu()?.currency;return ds({form:t,title:"A lot that came",act_words:"Record it as bought",names:["bought","pack","packs","price","seller","lot","on","best-before"],fields:r`${Ft(t,{name:"bought",label:"Material"})}
      ${Su(t,"bought","Materials",Pu()?.materials??[])}
      ${Au(t,"pack","One pack holds","either")}
      <div class="row">
        ${Ft(t,{name:"packs",label:"Packs",count:!0,hint:"left blank: one"})}
        ${Ft(t,{name:"price",label:`Price of one pack${e?`, ${e}`:""}`,number:!0,hint:e?"left blank: unpriced":'with its currency, as "27.50 EUR"; left blank: unpriced'})}
      </div>
      ${Ft(t,{name:"seller",label:"Seller"})} ${Su(t,"seller","Sellers",Pu()?.sellers??[])}
      ${Ft(t,{name:"lot",label:"Lot number",hint:"as on the pack; left blank: one of your own"})}
      <div class="row">${Ck(t,"Bought on")}</div>`,act:()=>{let n=Du(t,"pack","either");return n?{bought:Zt(t,"bought")??"",pack:n,price:Zt(t,"price"),...Ik(t)}:void 0}})}var Ik=t=>({packs:Zt(t,"packs"),seller:Zt(t,"seller"),lot:Zt(t,"lot"),on:Zt(t,"on"),"best-before":Zt(t,"best-before")});function Ek(t){return ds({form:t,title:"A lot that you made of others: lye solution, a blend",act_words:"Record it as made",names:["made","pack","of","lot","on","best-before"],fields:r`${Ft(t,{name:"made",label:"What it is"})}
      ${Su(t,"made","Made ahead",Pu()?.made_ahead??[])}
      ${Au(t,"pack","It makes","either")} ${UL(t)}
      ${Ft(t,{name:"lot",label:"Lot number",hint:"left blank: one of your own"})}
      <div class="row">${Ck(t,"Made on")}</div>`,act:()=>{let e=Du(t,"pack","either"),n=e?JL(t):void 0;return n?{made:Zt(t,"made")??"",pack:e,of:n,...Ik(t)}:void 0}})}var Lk=()=>a.stock.list?.materials.flatMap(({lots:t})=>t)??[];function UL(t){let e=(i,s)=>ze(t,{sources:t.sources.map((l,d)=>d===i?{...l,...s}:l)}),n=()=>ze(t,{sources:[...t.sources,{lot:"",amount:"",unit:""}]}),o=Ym(t,"of");return r`<div class="made-of" role="group" aria-label="What is in it">
    ${t.sources.map((i,s)=>zL(t,i,s,l=>e(s,l)))}
    <button type="button" @click=${n}>
      ${t.sources.length?"And of another lot":"What of which lot is in it"}
    </button>
    <p class=${o?"complaint":"hint"} id=${ls(t,"of")} tabindex="-1">
      ${o??"Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`}function zL(t,e,n,o){let i=ls(t,`of-${n}`),s=Lk().find(c=>ci(c)===e.lot),l=Zm(Nk(s)),d=()=>ze(t,{sources:t.sources.filter((c,p)=>p!==n)});return r`<div class="row">
    <div class="field">
      <label for="${i}-lot">Lot</label>
      <select id="${i}-lot" .value=${D(e.lot)} @change=${c=>o({lot:Bk(c)})}>
        <option value="" ?selected=${!e.lot}>Choose</option>
        ${Lk().map(c=>r`<option value=${ci(c)} ?selected=${ci(c)===e.lot}>
              ${KL(c)}, lot ${c.lot}: ${De(a.units,c.left)}
            </option>`)}
      </select>
    </div>
    <div class="field">
      <label for="${i}-amount">So much of it</label>
      <input
        id="${i}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${D(e.amount)}
        @input=${c=>o({amount:Bk(c)})}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${n+1}">
      ${l.map(c=>r`<button type="button" aria-pressed=${c===e.unit?"true":"false"} @click=${()=>o({unit:c})}>
            ${c}
          </button>`)}
    </div>
    <button type="button" aria-label="Leave out lot ${n+1}" @click=${d}>Leave out</button>
  </div>`}var Bk=t=>t.target.value,Nk=t=>t===void 0?"either":t.left.pieces===void 0?"mass":"pieces";function KL({material:t,make:e}){let n=a.stock.list?.materials.find(o=>o.material===t);return e??n?.shown_as??t}function JL(t){let e=[];for(let{lot:n,amount:o,unit:i}of t.sources){if(!n)return void Vo(t,"of","Which lot is it?");if(!o.trim())return void Vo(t,"of","How much of it is taken?");if(Rt(o)&&!i)return void Vo(t,"of","In which unit is it?");e.push(`${n}=${Rt(o)?`${o.trim()} ${i}`:o.trim()}`)}return e}function jk(t,e){let n=Nk(e[0]);return ds({form:t,title:`How much is there of lot ${e[0].lot}?`,act_words:"Record the count",names:["counted","why","on"],fields:r`${e.length>1?r`<p class="hint">${e.length} deliveries have this lot number: count them together.</p>`:u}
    ${Au(t,"counted","There now",n)}
    ${Ft(t,{name:"why",label:"Why, if it is not what was left",hint:"spilt, thrown away"})}
    ${Ft(t,{name:"on",label:"Counted on",kind:"date"})}`,act:()=>{let o=Du(t,"counted",n);return o?{counted:[`${t.of}=${o}`],why:Zt(t,"why"),on:Zt(t,"on")}:void 0}})}function Hk(){let{materials:t=[]}=a.stock.list??{};return r`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${jr("bought","","Bought",!0)} ${jr("made","","Made of others")}</div>
    ${Hr("bought","",Wk)} ${Hr("made","",Ek)} ${VL()}
    ${t.length?r`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${t.map(QL)}`:r`<p class="aside">No lot has anything left.</p>`}
  </section>`}function jr(t,e,n,o=!1,i,s=""){let l=()=>{Xd({kind:t,of:e,seen:i}),W(B(us({kind:t,of:e}))),requestAnimationFrame(()=>document.getElementById(us({kind:t,of:e}))?.scrollIntoView({block:"nearest"}))};return r`<button
    type="button"
    id=${Dk(t,e)}
    class=${o?"strong":""}
    aria-expanded=${Bn({kind:t,of:e})?"true":"false"}
    aria-label=${s?`${n}: ${s}`:u}
    @click=${l}
  >
    ${n}
  </button>`}function Hr(t,e,n){let o=Bn({kind:t,of:e});return o?n(o):u}function VL(){let t=a.stock.list?.not_counted??[];if(!t.length)return u;let e=()=>{Xd({kind:"take-have",of:""});let o=Bn({kind:"take-have",of:""});o&&La(o,{"take-have":!0,on:o.typed.on})},n=Bn({kind:"take-have",of:""})?.complaint?.line;return r`<div class="part">
    <p>The studio's file lists what is no lot yet: ${t.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${e}>Take it over as lots, once</button>
    ${n?r`<p class="alarm" role="alert">${n}</p>`:u}
  </div>`}var QL=t=>r`<section class="material" aria-label=${t.shown_as}>
    <h3>${t.shown_as}</h3>
    <ul class="lots">
      ${t.lots.map(e=>GL(e,t))}
    </ul>
  </section>`;function GL(t,e){let n=ci(t),o=Sk(t,e),i=o[0]===t;return r`<li class="lot ${t.is_past?"past":""}" data-lot=${n}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${t.lot}</b>${t.make?r` <span>${t.make}</span>`:u} ${YL(t)}
      </p>
      <p class="lot-facts">${Xm(t).map(s=>r`<span>${s}</span> `)}</p>
      ${t.is_past?tf(t):u}
    </div>
    <div class="lot-acts">
      ${i?jr("counted",n,"Counted",!1,Qm(o),`lot ${t.lot}`):u}
      <button type="button" aria-label="Where it went: lot ${t.lot}" @click=${()=>Ae(t.lot)}>
        Where it went
      </button>
    </div>
    ${i?cs(n):u}
    ${i?Hr("counted",n,s=>jk(s,o)):u}
  </li>`}function YL({left:t,packs:e,pack:n}){let o=(t.g??t.pieces??0)<0,i=t.pieces===void 0?{g:-(t.g??0)}:{pieces:-t.pieces};return o?r`<span class="below"
        >${De(a.units,i)} more was taken than was recorded: count what is there</span
      >`:r`<b>${De(a.units,t)}</b>
        <span class="aside">left of ${e===1?"":`${e} \xD7 `}${n}</span>`}function Xm({best_before:t,is_past:e,origin:n,on:o,seller:i,paid:s,currency:l}){let d={bought:"bought",made:"made","before records":"there before records began,"}[n];return[t&&!e?`best before ${E(t)}`:"",`${d} ${E(o)}${i?` from ${i}`:""}`,s!==null?`${s} ${l} in all`:n==="bought"?"unpriced":""].filter(Boolean)}var tf=({best_before:t,lot:e})=>r`<p class="past-words">
    Best before ${E(t)}, which is past. Is ${e} still good? No batch takes it unless you choose it.
  </p>`;async function Ou(t,e){if(Vd(t,e),a.run.file===t)return a.record.run===t&&Ko(e),f({view:"record"});try{await Cn(t,"record")}catch(n){if(!(n instanceof w))throw n;P(n.message),f({stock:{...a.stock,told:{of:"",sentences:[n.message]}}})}}function Uk(){let{pieces:t=[]}=a.stock.list??{};return r`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${t.length?r`<ul class="lots">
            ${t.map(ZL)}
          </ul>`:r`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`}
  </section>`}var qk=[["sold","Sold"],["given","Given away"],["spoilt","Spoilt"],["counted-pieces","Counted"]];function ZL(t){let{batch:e,run:n,made:o,there:i}=t;return r`<li class="lot pieces-of" data-batch=${e}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${e}</b> <span>${n}</span> ${o===null?u:r`<b>${i} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${o===null?"How many were made is not noted yet":ef(t)}</span> ${XL(t)}
      </p>
    </div>
    <div class="lot-acts">
      ${o===null?u:qk.map(([s,l])=>jr(s,e,l,!1,{pieces:i},`pieces of ${e}`))}
      <button type="button" aria-label="Its record: ${e}" @click=${()=>Ou(t.file,t.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${e}" @click=${()=>Ae(e)}>
        What is in it
      </button>
    </div>
    ${cs(e)} ${qk.map(([s])=>Hr(s,e,l=>eB(l,t)))}
  </li>`}function ef({made:t,rejected:e,sold:n,given:o,spoilt:i,counted:s=0}){let l=[[e,"rejected"],[n,"sold"],[o,"given away"],[i,"spoilt"],[Math.max(s,0),"more by count"],[Math.max(-s,0),"fewer by count"]];return[`${t??0} made`,...l.filter(([d])=>d).map(([d,c])=>`${d} ${c}`)].join(", ")}function XL({cures_until:t,for_sale:e,why_not:n,made:o}){let i=t?`cures until ${E(t)} by its formulas`:"";return e?r`<span>${i?`\u25D4 noted as ready, and ${i}`:"\u2713 for sale"}</span>`:o===null||!n?i?r`<span>◔ ${i}</span>`:u:r`${i?r`<span>◔ ${i}</span> `:u}<span
      >✗ not for sale: ${Ot(n)}</span
    >`}var tB={sold:["Sold","Record them as sold","Sold on"],given:["Given away","Record them as given away","Given on"],spoilt:["Spoilt","Record them as spoilt","Found on"],"counted-pieces":["Counted","Record the count","Counted on"]};function eB(t,{batch:e,there:n=0}){let{kind:o}=t,[i,s,l]=tB[o],d=o==="sold"||o==="given";return ds({form:t,title:`${i}, of ${e}: ${n} there`,act_words:s,names:[o,"for","order","why","on"],fields:r`${Ft(t,{name:o,label:o==="counted-pieces"?"Pieces there":"Pieces",count:!0})}
    ${d?nB(t):Ft(t,{name:"why",label:"Why"})}
    ${Ft(t,{name:"on",label:l,kind:"date"})}`,act:()=>({[o]:[`${e}=${Zt(t,o)??""}`],on:Zt(t,"on"),why:Zt(t,"why"),order:t.typed.order||void 0,for:t.typed.order?void 0:Zt(t,"for")})})}function nB(t){let e=a.files?.orders.filter(({shipped:i})=>!i)??[],{order:n}=t.typed,o=i=>ze(t,{typed:{order:i===n?"":i}});return r`${e.length?r`<p class="question" id="for-order-${t.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${t.kind}">
            ${e.map(({file:i,name:s,pieces:l,due:d})=>r`<button
                  type="button"
                  aria-pressed=${i===n?"true":"false"}
                  @click=${()=>o(i)}
                >
                  ${s||i}
                  <small
                    >${[l===void 0?"":J(l,"piece"),d?`due ${E(d)}`:""].filter(Boolean).join(", ")}</small
                  >
                </button>`)}
          </div>`:u}
  ${n?u:Ft(t,{name:"for",label:e.length?"Or for whom":"For whom",hint:"may be left blank"})}`}function zk(){let{list:t,failed:e}=a.stock;return r`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${e!==void 0?r`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${e}.</p>`:u}
      ${t?r`${oB()} ${iB()} ${sB()} ${Hk()} ${Uk()}`:r`<p class="hint">${e===void 0?"Reading ...":""}</p>`}
    </div>`}function oB(){let{list:t,told:e}=a.stock;return!e||!t?u:t.pieces.some(({batch:o})=>o===e.of)||t.materials.some(({lots:o})=>o.some(i=>`${i.material}:${i.lot}`===e.of))?u:cs(e.of)}function iB(){let t=a.finding?.key==="trail"?a.finding.text:"";return r`<form class="row find-trail" @submit=${n=>{n.preventDefault(),t.trim()&&(f({finding:void 0}),Ae(t.trim()))}}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${D(t)}
        @input=${n=>f({finding:{key:"trail",text:n.target.value}})}
      />
    </div>
    <button type="submit" ?disabled=${!t.trim()}>Follow it</button>
  </form>`}function sB(){let{has_records:t,notes:e=[]}=a.stock.list??{},n=e.filter(({severity:o})=>o==="danger");return r`${t?u:r`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${n.map(({text:o})=>r`<p class="alarm">${Ot(o)}</p>`)}`}function Jk(){let{trail:t}=a.stock,{trail:e,complaint:n,of:o=""}=t??{};return r`<h1 tabindex="-1">${e?rB(e):o}</h1>
    <div class="trail">
      <div class="row">
        <button type="button" @click=${()=>f({view:"shelf"})}>Back to the shelf</button>
        ${e?r`<button type="button" @click=${()=>window.print()}>Print</button>`:u}
      </div>
      ${n?r`<p class="alarm" role="alert">${n}</p>`:u}
      ${e?aB(e):n?u:r`<p class="hint">Reading ...</p>`}
    </div>`}function rB({asked:t,is:e,batches:n}){return e==="lot"?`Where lot ${t} went`:e==="batch"?`What is in ${t}`:`What ${n.flatMap(({went:i})=>i).find(i=>i.for)?.for??t} got`}function aB(t){let{is:e,lots:n,batches:o,gaps:i}=t,s=r`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${e==="lot"?"The lot":"Lots in it"}</h2>
    ${n.length?r`<ul class="lots">
            ${n.map(lB)}
          </ul>`:r`<p class="aside">No lot of it is known.</p>`}
  </section>`,l=r`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${e==="lot"?"Batches that hold it":e==="batch"?"The batch":"Batches"}</h2>
    ${o.length?r`<ul class="lots">
            ${o.map(d=>dB(d,t))}
          </ul>`:r`<p class="aside">No batch has taken of it.</p>`}
  </section>`;return r`${e==="lot"?r`${s} ${l}`:r`${l} ${s}`} ${fB(i)}`}var ps=(t,e)=>r`<button type="button" class="to-trail" @click=${()=>Ae(t)}>${e}</button>`;function lB(t){let{shown_as:e}=t;return r`<li class="lot" data-lot=${t.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${ps(t.lot,t.lot)} <span>${t.make??e}</span> <b>${De(a.units,t.left)}</b>
        <span class="aside">left of ${t.packs===1?"":`${t.packs} \xD7 `}${t.pack}</span>
      </p>
      <p class="lot-facts">${Xm(t).map(n=>r`<span>${n}</span> `)}</p>
      ${t.is_past?tf(t):u} ${Kk("Made of",t.from_lots)} ${Kk("Went into",t.into_lots)}
      ${t.counts.map(({on:n,by:o,why:i})=>r`<p class="lot-facts">Counted ${E(n)}: ${uB(o)}${i?` (${i})`:""}</p>`)}
    </div>
  </li>`}function uB({g:t,pieces:e}){let n=t??e??0;return n?`${De(a.units,e===void 0?{g:Math.abs(n)}:{pieces:Math.abs(n)})} ${n<0?"less":"more"} than was recorded`:"as it was"}var Kk=(t,e)=>e.length?r`<p class="trail-line">
        ${t}
        ${e.map(n=>r`${ps(n.lot,n.lot)} <span>${n.material}, ${De(a.units,n.amount)}</span> `)}
      </p>`:u;function dB(t,{is:e,asked:n}){let{batch:o,run:i,begun_on:s,rows:l,pieces:d,went:c,cost:p}=t;return r`<li class="lot pieces-of" data-batch=${o}>
    <div class="lot-told">
      <p class="lot-left">
        ${e==="batch"&&o===n?r`<b class="code">${o}</b>`:ps(o,o)} <span>${i}</span>
        ${d.made===null?u:r`<b>${d.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${E(s)}</span>
        <span>${d.made===null?"how many were made is not noted":ef(d)}</span>
        ${p?r`<span>${cB(p)}</span>`:u}
      </p>
      ${c.length?r`<ul class="trail-went">
              ${c.map(pB)}
            </ul>`:u}
      <ul class="trail-rows">
        ${l.map(mB)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${o}" @click=${()=>{Ou(t.file,t.id)}}>
        Its record
      </button>
    </div>
  </li>`}function cB({materials:t,unpriced:e}){let n=t.map(({amount:i,currency:s})=>`${i} ${s}`).join(" and "),o=e.length?`unpriced: ${e.join(", ")}`:"";return[n?`its materials cost ${n}`:"",o].filter(Boolean).join("; ")}function pB({what:t,pieces:e,on:n,order:o,for:i,why:s}){let l={sold:"sold",given:"given away",spoilt:"spoilt",counted:""}[t],d=Math.abs(e),c=t==="counted"?`${d} ${e<0?"fewer":"more"} by count`:`${d} ${l}`,p=o??i;return r`<li>
    ${c} ${p?r`to ${ps(p,i??p)}`:u} on ${E(n)}${s?` (${s})`:""}
  </li>`}function mB({shown_as:t,weighed:e,from:n,unknown:o}){let i=(o.g??o.pieces??0)>0;return r`<li>
    <span>${t}, ${De(a.units,e)}</span>
    ${n.map(s=>r`<span class="trail-from"
          >${ps(s.lot,s.lot)} ${n.length>1||i?De(a.units,s.amount):u}
          ${s.make??u}</span
        > `)}
    ${i?r`<span class="trail-unknown"
            >${n.length?`${De(a.units,o)} of`:"of"} a lot that nobody noted</span
          >`:u}
  </li>`}function fB(t){return t.length?r`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${t.map(({batch:e,run:n,shown_as:o})=>r`<li>${ps(e,e)} ${n}: ${o}</li>`)}
    </ul>
  </section>`:u}function Vk(){let t=ro();return r`${Le("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${al(Vn,"Each file is named by the studio, or by the runs that use its tips.",e=>Ms(Vn,e))}
      ${t?b$(t):u}
      ${ll({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(v$(e)):wa(Vn,Cc(e)),tried:ct})}
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
          ${Hs().map(({name:e,opening:n,area_mm2:o})=>r`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${Be("tips")}`}var Yk=document.getElementById("page");function Zk(){let{view:t,fault:e}=a;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Fw()} ${L_()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${a.is_old&&!ue(t)&&t!=="order"&&t!=="trail"?"old-now":""}
    >
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${gB()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var hB={runs:Tk,orders:Tw,formulas:zb,moulds:Kb,fats:O$,tips:Vk,shelf:zk};function gB(){let{view:t,fault:e}=a;return Tn(t)?yk(t):ue(t)?hB[t]():t==="formula"?Hb():t==="order"?xw():t==="trail"?Jk():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Xf(()=>{Ob(),ke(Zk(),Yk),bB()});ke(Zk(),Yk);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ue(a.view)&&!a.mould)return;t.preventDefault();let{undo:e,redo:n}=iu();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Wa();me()});function _B(){if(!a.run.file)return nf();f({fault:void 0}),me(),rt()}function nf(){f({fault:void 0}),Eb().catch(t=>{f({fault:$B(t)}),t instanceof w&&t.may_pass&&window.setTimeout(nf,2e3)})}function $B(t){return t instanceof w&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var Qk=new ResizeObserver(([{target:t}])=>Xk(t.offsetHeight)),Gk=null;function bB(){let t=document.querySelector(".foremost");t!==Gk&&(Qk.disconnect(),t?Qk.observe(t):Xk(0),Gk=t)}var Xk=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);eh();O_();Ib();sf(t=>{Ki(),t&&_B()});nf();
