var Js=globalThis,Vs=Js.ShadowRoot&&(Js.ShadyCSS===void 0||Js.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,um=Symbol(),lm=new WeakMap,qs=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==um)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(Vs&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=lm.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&lm.set(n,t))}return t}toString(){return this.cssText}},cm=e=>new qs(typeof e=="string"?e:e+"",void 0,um);var pm=(e,t)=>{if(Vs)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=Js.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Vl=Vs?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return cm(n)})(e):e;var{is:r$,defineProperty:s$,getOwnPropertyDescriptor:a$,getOwnPropertyNames:l$,getOwnPropertySymbols:u$,getPrototypeOf:c$}=Object,Ks=globalThis,mm=Ks.trustedTypes,p$=mm?mm.emptyScript:"",m$=Ks.reactiveElementPolyfillSupport,Yr=(e,t)=>e,Kl={toAttribute(e,t){switch(t){case Boolean:e=e?p$:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},fm=(e,t)=>!r$(e,t),dm={attribute:!0,type:String,converter:Kl,reflect:!1,useDefault:!1,hasChanged:fm};Symbol.metadata??=Symbol("metadata"),Ks.litPropertyMetadata??=new WeakMap;var ro=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=dm){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&s$(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=a$(this.prototype,t)??{get(){return this[n]},set(s){this[n]=s}};return{get:i,set(s){let c=i?.call(this);r?.call(this,s),this.requestUpdate(t,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??dm}static _$Ei(){if(this.hasOwnProperty(Yr("elementProperties")))return;let t=c$(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(Yr("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Yr("properties"))){let n=this.properties,o=[...l$(n),...u$(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Vl(i))}else t!==void 0&&n.push(Vl(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return pm(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Kl).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),s=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Kl;this._$Em=i;let c=s.fromAttribute(n,r.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let s=this.constructor;if(i===!1&&(r=this[t]),o??=s.getPropertyOptions(t),!((o.hasChanged??fm)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(s._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},s){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,s??n??this[t]),r!==!0||s!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:s}=r,c=this[i];s!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,r,c)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};ro.elementStyles=[],ro.shadowRootOptions={mode:"open"},ro[Yr("elementProperties")]=new Map,ro[Yr("finalized")]=new Map,m$?.({ReactiveElement:ro}),(Ks.reactiveElementVersions??=[]).push("2.1.2");var Yl=globalThis,hm=e=>e,Gs=Yl.trustedTypes,gm=Gs?Gs.createPolicy("lit-html",{createHTML:e=>e}):void 0,Zl="$lit$",so=`lit$${Math.random().toFixed(9).slice(2)}$`,Ql="?"+so,d$=`<${Ql}>`,si=document,Qr=()=>si.createComment(""),Xr=e=>e===null||typeof e!="object"&&typeof e!="function",Xl=Array.isArray,vm=e=>Xl(e)||typeof e?.[Symbol.iterator]=="function",Gl=`[ 	
\f\r]`,Zr=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,_m=/-->/g,wm=/>/g,ii=RegExp(`>|${Gl}(?:([^\\s"'>=/]+)(${Gl}*=${Gl}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),$m=/'/g,bm=/"/g,km=/^(?:script|style|textarea|title)$/i,eu=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),l=eu(1),tt=eu(2),V1=eu(3),hn=Symbol.for("lit-noChange"),f=Symbol.for("lit-nothing"),ym=new WeakMap,ri=si.createTreeWalker(si,129);function xm(e,t){if(!Xl(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return gm!==void 0?gm.createHTML(t):t}var Sm=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",s=Zr;for(let c=0;c<n;c++){let p=e[c],h,w,$=-1,y=0;for(;y<p.length&&(s.lastIndex=y,w=s.exec(p),w!==null);)y=s.lastIndex,s===Zr?w[1]==="!--"?s=_m:w[1]!==void 0?s=wm:w[2]!==void 0?(km.test(w[2])&&(i=RegExp("</"+w[2],"g")),s=ii):w[3]!==void 0&&(s=ii):s===ii?w[0]===">"?(s=i??Zr,$=-1):w[1]===void 0?$=-2:($=s.lastIndex-w[2].length,h=w[1],s=w[3]===void 0?ii:w[3]==='"'?bm:$m):s===bm||s===$m?s=ii:s===_m||s===wm?s=Zr:(s=ii,i=void 0);let T=s===ii&&e[c+1].startsWith("/>")?" ":"";r+=s===Zr?p+d$:$>=0?(o.push(h),p.slice(0,$)+Zl+p.slice($)+so+T):p+so+($===-2?c:T)}return[xm(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},es=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,s=0,c=t.length-1,p=this.parts,[h,w]=Sm(t,n);if(this.el=e.createElement(h,o),ri.currentNode=this.el.content,n===2||n===3){let $=this.el.content.firstChild;$.replaceWith(...$.childNodes)}for(;(i=ri.nextNode())!==null&&p.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let $ of i.getAttributeNames())if($.endsWith(Zl)){let y=w[s++],T=i.getAttribute($).split(so),P=/([.?@])?(.*)/.exec(y);p.push({type:1,index:r,name:P[2],strings:T,ctor:P[1]==="."?Zs:P[1]==="?"?Qs:P[1]==="@"?Xs:li}),i.removeAttribute($)}else $.startsWith(so)&&(p.push({type:6,index:r}),i.removeAttribute($));if(km.test(i.tagName)){let $=i.textContent.split(so),y=$.length-1;if(y>0){i.textContent=Gs?Gs.emptyScript:"";for(let T=0;T<y;T++)i.append($[T],Qr()),ri.nextNode(),p.push({type:2,index:++r});i.append($[y],Qr())}}}else if(i.nodeType===8)if(i.data===Ql)p.push({type:2,index:r});else{let $=-1;for(;($=i.data.indexOf(so,$+1))!==-1;)p.push({type:7,index:r}),$+=so.length-1}r++}}static createElement(t,n){let o=si.createElement("template");return o.innerHTML=t,o}};function ai(e,t,n=e,o){if(t===hn)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Xr(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=ai(e,i._$AS(e,t.values),i,o)),t}var Ys=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??si).importNode(n,!0);ri.currentNode=i;let r=ri.nextNode(),s=0,c=0,p=o[0];for(;p!==void 0;){if(s===p.index){let h;p.type===2?h=new Yi(r,r.nextSibling,this,t):p.type===1?h=new p.ctor(r,p.name,p.strings,this,t):p.type===6&&(h=new ea(r,this,t)),this._$AV.push(h),p=o[++c]}s!==p?.index&&(r=ri.nextNode(),s++)}return ri.currentNode=si,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Yi=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=f,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=ai(this,t,n),Xr(t)?t===f||t==null||t===""?(this._$AH!==f&&this._$AR(),this._$AH=f):t!==this._$AH&&t!==hn&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):vm(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==f&&Xr(this._$AH)?this._$AA.nextSibling.data=t:this.T(si.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=es.createElement(xm(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new Ys(i,this),s=r.u(this.options);r.p(n),this.T(s),this._$AH=r}}_$AC(t){let n=ym.get(t.strings);return n===void 0&&ym.set(t.strings,n=new es(t)),n}k(t){Xl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(Qr()),this.O(Qr()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=hm(t).nextSibling;hm(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},li=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=f,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=f}_$AI(t,n=this,o,i){let r=this.strings,s=!1;if(r===void 0)t=ai(this,t,n,0),s=!Xr(t)||t!==this._$AH&&t!==hn,s&&(this._$AH=t);else{let c=t,p,h;for(t=r[0],p=0;p<r.length-1;p++)h=ai(this,c[o+p],n,p),h===hn&&(h=this._$AH[p]),s||=!Xr(h)||h!==this._$AH[p],h===f?t=f:t!==f&&(t+=(h??"")+r[p+1]),this._$AH[p]=h}s&&!i&&this.j(t)}j(t){t===f?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Zs=class extends li{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===f?void 0:t}},Qs=class extends li{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==f)}},Xs=class extends li{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=ai(this,t,n,0)??f)===hn)return;let o=this._$AH,i=t===f&&o!==f||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==f&&(o===f||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ea=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){ai(this,t)}},Tm={M:Zl,P:so,A:Ql,C:1,L:Sm,R:Ys,D:vm,V:ai,I:Yi,H:li,N:Qs,U:Xs,B:Zs,F:ea},f$=Yl.litHtmlPolyfillSupport;f$?.(es,Yi),(Yl.litHtmlVersions??=[]).push("3.3.3");var ui=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Yi(t.insertBefore(Qr(),r),r,void 0,n??{})}return i._$AI(e),i};var tu=globalThis,Zi=class extends ro{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=ui(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return hn}};Zi._$litElement$=!0,Zi.finalized=!0,tu.litElementHydrateSupport?.({LitElement:Zi});var h$=tu.litElementPolyfillSupport;h$?.({LitElement:Zi});(tu.litElementVersions??=[]).push("4.2.2");var Pm=()=>{},nu=!1;function Rm(e){Pm=e}function Dn(){nu||(nu=!0,queueMicrotask(()=>{nu=!1,Pm()}))}function Am(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}function A(e,t){let n=e;for(let o of Am(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function Ge(e,t,n){return ou(e,Am(t),n)}function ou(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let c=[...e],p=ou(c[Number(o)],i,n);return p===void 0?c.splice(Number(o),1):c[Number(o)]=p,c}let r={...e??{}},s=ou(r[o],i,n);return s===void 0?delete r[o]:r[o]=s,r}var Dm={};function ao(e,t){(Dm[e]??=[]).push(t)}function Po(e,t){for(let n of Dm[e]??[])n(t)}var Mm=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],ta="";function Em(e){ta=e,sessionStorage.setItem("key",e)}Em(Mm()??sessionStorage.getItem("key")??"");function Fm(e){addEventListener("hashchange",()=>{let t=Mm();!t||t===ta||(Em(t),e())})}var Om={status:0,body:new Blob};async function g$(e,t,n){try{let o=await fetch(t,{method:e,body:n,headers:{"X-Bench-Key":ta}});return{status:o.status,body:await o.blob()}}catch{return Om}}function _$(e,t,n,o){return new Promise(i=>{let r=new XMLHttpRequest;r.open(e,t),r.setRequestHeader("X-Bench-Key",ta),r.responseType="blob",r.upload.onprogress=s=>o(s.total?s.loaded/s.total:0),r.onerror=()=>i(Om),r.onload=()=>i({status:r.status,body:r.response}),r.send(n)})}var Lm={send:(e,t,n,o)=>n!==void 0&&o?_$(e,t,n,o):g$(e,t,n)};var w$=Lm,gn=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),X=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},$$={file:"",field:"",problem:"the program does not answer",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"The program does not answer: start brimwright again and open the address it prints. What you typed is kept here."},Cm="what you typed is kept here";function b$(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${Cm}`]:["a fault of brimwright itself",`${Cm}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function Wm(e,t){if(e===0)return new X(0,$$);let n=b$(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new X(e,o,t)}async function y$(e,t){try{return Wm(e,JSON.parse(await t.text()))}catch{return Wm(e,{})}}async function Im(...e){let{status:t,body:n}=await w$.send(...e);if(t>=200&&t<300)return n;throw await y$(t,n)}var Qi=async(...e)=>JSON.parse(await(await Im(...e)).text()),ts=(e,t)=>Qi("POST",e,JSON.stringify(t)),Xi=()=>Qi("GET","/api/files"),_n=e=>Qi("GET",`/api/run?file=${encodeURIComponent(e)}`),na=e=>Qi("PUT","/api/run",JSON.stringify(e));async function Bm(e,t){let n=`/api/changed?file=${encodeURIComponent(e)}&version=${t??""}&wait=0`;return(await Qi("GET",n)).version}var Nm=e=>ts("/api/plan",e),Ro=e=>ts("/api/gauge",e),iu=e=>ts("/api/list",{what:e}),zm=async()=>(await iu("fats")).fats,Hm=async()=>(await iu("moulds")).moulds,jm=async()=>(await iu("tips")).tips,er=e=>Im("POST","/api/document",JSON.stringify(e)),Um=async e=>(await ts("/api/document",{...e,open:!0})).address,Jm=(e,t)=>Qi("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`,e,t),qm=async(e,t)=>(await ts("/api/keep",{upload:e,as:t})).file;var Ut=["pour","pipe","apart"];var Jt=e=>`${JSON.stringify(e,null,2)}
`;function Rt(e){try{let t=JSON.parse(e??"");return t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0}catch{return}}var ns=e=>e.slice(0,e.lastIndexOf("/")+1),os=e=>e.slice(e.lastIndexOf("/")+1),Vm=(e,t)=>{let n=ns(e);return n?v$(n+t):t};function v$(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Ao(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function tr(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|formula))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(s=>s.file===r))return r}}var k$=["mould","formula","file","fats_from","tips_from"];function ru(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?ru(o,i):k$.includes(n)?[i]:[]})}function su(e,t){let[n,o]=[e,t];for(let i of["/$schema",...ru(e)])[n,o]=[Ge(n,i,void 0),Ge(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Km(e,t){let n=ru(e).filter(o=>A(e,o)!==A(t,o));return o=>n.reduce((i,r)=>A(i,r)===A(e,r)?Ge(i,r,A(t,r)):i,o)}var je=(e,t)=>({name:e,label:t,unit:"mm"}),Do=je("height","Floor to brim"),oa={name:"draft",label:"Lean of the wall",unit:"\xB0",optional:!0},au={block:{words:"Box, loaf or slab",measures:[je("length","Longer side at the brim"),je("width","Shorter side"),Do,oa,{...je("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[je("floor_diameter","Across the floor"),je("brim_diameter","Across the brim"),Do]},fluted_cup:{words:"Fluted cup",measures:[je("floor_diameter","Across the floor"),je("brim_diameter","Across the brim"),Do,{name:"flutes",label:"Flutes",unit:"",count:!0},je("flute_depth","Depth of a flute")]},polygon:{words:"Equal sides",measures:[{name:"sides",label:"Sides",unit:"",count:!0},je("across_flats","Across the flats"),Do,oa]},dome:{words:"Bowl",measures:[je("diameter","Across the brim"),Do]},half_ball:{words:"Half ball",measures:[je("diameter","Across the brim")]},ball:{words:"Ball",measures:[je("diameter","Across")]},half_ring:{words:"Half ring",measures:[je("centre_diameter","Ring, middle to middle of the tube"),je("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[je("outer_floor_diameter","Cup, across the floor"),je("outer_brim_diameter","Cup, across the brim"),je("post_floor_diameter","Post, at its foot"),je("post_brim_diameter","Post, at its top"),Do]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[je("height","Height"),je("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Do,oa],points:{columns:[je("x","From the left"),je("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[je("side","Straight edge, tip to round"),Do,oa]}},Gm=Object.fromEntries(Object.entries(au).map(([e,{words:t}])=>[e,t])),nr=e=>au[e]?.measures??[],Mo=e=>au[e]?.points;var lu=(e,t)=>String(A(e,t)??"").trim(),is=e=>lu(e,"/shape/kind"),Mn=(e,t)=>A(e,`/${t}`)!==void 0,uu=e=>["body","skin"].includes(lu(e,"/mesh/role"));function Qt(e,t){let n=A(e,t);return Array.isArray(n)?n:[]}function Ym(e,t){return(Mo(is(e))?.columns??[]).map(({name:o})=>String(A(t,`/${o}`)??"").trim())}function or(e){return Qt(e,"/shape/points").flatMap((t,n)=>Ym(e,t).every(Boolean)?[n]:[])}function ia(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return Qt(e,"/shape/points").flatMap((n,o)=>t(Ym(e,n))?[o]:[])}var cu=e=>Qt(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function Zm(e){let t=e,n=(o,i)=>{if(!Array.isArray(A(t,o)))return;let r=i.map(s=>A(e,`${o}/${s}`));t=Ge(t,o,r)};return Mo(is(e))&&n("/shape/points",or(e)),n("/water/weighings",cu(e)),t}function Qm(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?or(e):cu(e);return`${n}/${r[Number(o)]??o}${i}`}function rs(e){let t=[],n=i=>lu(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(Mn(e,"shape")){let i=is(e);o(i!=="","the shape");for(let{name:s,label:c,optional:p}of nr(i))o(p||n(`/shape/${s}`),c.toLowerCase());let r=Mo(i);r&&o(or(e).length>=r.least,`${r.least} points at least`)}if(Mn(e,"water")){o(n("/water/temperature"),"the water's temperature"),o(A(e,"/water/to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(A(e,`/water/to/${i}`)===void 0||n(`/water/to/${i}`),"the water's line");o(n("/water/of"),"what was weighed"),o(cu(e).length>0,"a weighing of water")}return!uu(e)&&!Mn(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var ss={name:"run",list:"runs",new_name:({shipped:e,file:t,now:n})=>e?os(t):Ao(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},ra={name:"formula",list:"formulas",new_name:({shipped:e,file:t,now:n})=>e?os(t):Ao(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},lo={name:"mould",list:"moulds",new_name:({now:e})=>Ao(String(e.name),".json"),written:e=>({...Zm(e),name:String(e.name??"").trim()}),is_begun:e=>Mn(e,"shape")||Mn(e,"mesh")};var Gn={view:"reading",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:{kind:ss,id:"",file:"",version:null,shipped:!1,now:{},saved:void 0,unanswered:[]},formulas:{},past:[],future:[],batch:0,is_old:!1,dangers:{run:[],apart:[]},start_complaint:"",new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},open:new Set,folded:new Set,units:x$(),announcement:""},u=Gn;function x$(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}function S(e){Object.assign(Gn,e),Dn()}var Yn=e=>S({announcement:e});function ee(e,t){Object.assign(e,t),Dn()}function uo(e,t){let{[e]:n,...o}=Gn.formulas;S({formulas:t?{...o,[e]:t}:o})}function ir(e,t){let n=new Set(Gn[e]);n.delete(t)||n.add(t),S({[e]:n})}function pu(e){Gn.open.has(e)||S({open:new Set(Gn.open).add(e)})}function sa(e,t,{name:n,note:o}={}){if(!Gn.files)return;let i={file:t,name:String(n??""),note:String(o??""),shipped:!1},r=Gn.files[e].filter(c=>c.file!==t),s=Gn.files[e].findIndex(c=>c.file===t);r.splice(s<0?r.length:s,0,i),S({files:{...Gn.files,[e]:r}})}async function rr({kind:e,name:t,text:n,from:o,about_to:i,is_own:r}){for(;;){let{runs:s=[],formulas:c=[],moulds:p=[]}=u.files??{},h=tr(t,[...s,...c,...p]);i?.(h);let w=await S$(h,n,o);if(sa(e.list,h,Rt(w.there.text)??{name:h}),w.is_new||r?.(w.there))return w.there}}async function S$(e,t,n){try{return{is_new:!0,there:await na({file:e,version:null,text:t,from:n})}}catch(o){if(!(o instanceof X)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var aa=e=>`unsaved ${e.name} ${u.files?.folder??""} `;function ci({kind:e,id:t,file:n,version:o,shipped:i,now:r},s){if(e.is_begun(r))try{let c={id:t,file:n,version:o,shipped:i,text:Jt(r),copy:s};localStorage.setItem(aa(e)+t,JSON.stringify(c))}catch{}}function mu(e,t){try{return JSON.parse(localStorage.getItem(aa(e)+t)??"null")??void 0}catch{return}}var pi=(e,t)=>localStorage.removeItem(aa(e)+t);function Xm(e){let t=aa(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>mu(e,o)??[])}var T$=300,nt=e=>e.now!==e.saved;function fu(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Eo(e,t,n=t){let o=await _n(t),i=JSON.parse(o.text),r=mu(e,n),s=r?.copy&&o.shipped?await P$(e,r,i):void 0;if(s)return pi(e,n),Eo(e,s);let{version:c,shipped:p=!1}=o,h={kind:e,id:n,file:t,version:c,shipped:p,now:i,saved:i,unanswered:[]};return r&&R$(h,r,o),h}async function P$(e,t,n){if(!u.files?.[e.list].some(r=>r.file===t.copy))return;let o=Rt(t.text),i=Rt((await _n(t.copy)).text);if(!(!o||!i||Jt(o)===Jt(n)))return su(e.written(o),i)?t.copy:void 0}function R$(e,t,n){let o=Rt(t.text);if(!o||Jt(o)===Jt(e.now))return pi(e.kind,e.id);ee(e,{now:o}),!(t.version===n.version||n.shipped)&&(ee(e,{version:t.version}),ld(e,n))}function Zn(e,t){let n=e.now;ee(e,{now:t,failed:void 0}),ci(e),Po("edited",{file:e,before:n})}var td=new WeakMap,du=async e=>td.get(e),as=e=>od(e,()=>A$(e)),nd=e=>od(e,()=>e.shipped?id(e,rd):Promise.resolve());function od(e,t){let n=du(e).then(t);return td.set(e,n.catch(()=>{})),n}async function A$(e){!nt(e)||e.theirs||await id(e,e.shipped||!e.file?rd:sd)}async function id(e,t){ee(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof X&&ee(e,{failed:gn(n.complaint)}),n}}async function rd(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),s=await rr({kind:t,name:t.new_name(e),text:Jt(r),from:i,about_to:w=>ci(e,w),is_own:({text:w})=>i!==void 0&&su(r,Rt(w)??{})}),c=JSON.parse(s.text),p=Km(r,c),h=e.now===o?c:p(e.now);pi(t,n),ee(e,{id:s.file,file:s.file,version:s.version,shipped:!1,now:h,saved:c}),nt(e)&&ci(e),i!==void 0&&Po("copied",{file:e,from:i,renamed:p})}async function sd(e){let{version:t,now:n}=e,o=Jt(e.kind.written(n));ee(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{hu(e,n,(await na({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof X)||i.status!==409)throw i;ad(e,i.answer),nt(e)&&!e.theirs&&await sd(e)}}function hu(e,t,n){ee(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),nt(e)?ci(e):pi(e.kind,e.id),sa(e.kind.list,e.file,t)}function ad(e,{version:t,text:n}){if(n===Jt(e.kind.written(e.now)))return hu(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);ee(e,{unanswered:[]}),o?ee(e,{version:t,saved:void 0,theirs:void 0}):ld(e,{version:t,text:n})}function ld(e,{version:t,text:n}){ee(e,{theirs:{version:t,text:n}}),ci(e),Yn(`${e.file} has changed underneath. Say which is to stay.`),Po("conflict",{file:e})}function ud(e){if(!e.theirs)return;let t=Rt(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return ee(e,{failed:n})}Po("giving_way",{file:e}),ee(e,{set_aside:e.now,now:t}),hu(e,t,e.theirs.version),Po("gave_way",{file:e})}function cd(e){e.theirs&&(ee(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),ci(e),Po("unwritten",{file:e}))}function pd(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e;Zn(e,t),ee(e,{set_aside:n})}var ed=e=>(e.theirs??e).version;async function gu(e,t,n){if(e.shipped||!e.file)return!1;let[o,i]=[e.file,ed(e)],r=()=>ed(e)===i&&e.file===o;if(await t(o,i)===i||(await du(e),!r()))return!1;n(),await _u();let s=await D$(o,t);return await du(e),r()&&(ad(e,s),nt(e)&&!e.theirs&&Po("unwritten",{file:e})),!0}async function D$(e,t){let n=await t(e,null);return n===null?{version:n,text:null}:_n(e)}var _u=()=>new Promise(e=>setTimeout(e,T$));var M$=300,E$=1200,la="",md=0;function ls(){let e={run:{file:u.run,now:u.run.now}};for(let t of Ut){let n=u.formulas[t];n&&(e[t]={file:n,now:n.now})}return e}function wu(e=""){let t=performance.now();e&&e===la&&t-md<=E$&&u.past.length||$u(ls()),S({future:[]}),la=e,md=t}var $u=e=>S({past:[...u.past,e].slice(-M$)});function ua(e){$u(dd(ls(),e,()=>e.saved??{}))}function dd(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function bu(e,t){let n=o=>o.map(i=>dd(i,e,t));S({past:n(u.past),future:n(u.future)})}function sr(){let e=u.past.at(-1);e&&(S({past:u.past.slice(0,-1),future:[...u.future,ls()]}),fd(e,"Undone"))}function ca(){let e=u.future.at(-1);e&&(S({past:[...u.past,ls()],future:u.future.slice(0,-1)}),fd(e,"Done again"))}function fd(e,t){la="",S({typed:void 0});for(let n of[...Ut,"run"])F$(n,e);Yn(t)}function F$(e,t){let n=t[e],o=e==="run"?n?.file===u.run:u.formulas[e]!==void 0;!n||!o||(e!=="run"&&uo(e,n.file),n.file.now!==n.now&&Zn(n.file,n.now))}var O$=e=>e===u.run||Ut.some(t=>u.formulas[t]===e);ao("giving_way",({file:e})=>{O$(e)&&(la="",$u(ls()),S({typed:void 0}))});ao("copied",({file:e,renamed:t})=>bu(e,t));var us=e=>Vm(u.run.file,e);function Fo(e,t){let n=us(e);return t?.some(o=>o.file===n)?n:e}async function mi(){for(let e of["pour","pipe"]){let t=A(u.run.now,`/${e}/formula`);typeof t=="string"&&t?await L$(e,Fo(t,u.files?.formulas)):uo(e,void 0)}}async function L$(e,t){if(u.formulas[e]?.file===t)return;let n=Ut.map(o=>u.formulas[o]).find(o=>o?.file===t);if(uo(e,n),!n)try{uo(e,await yu(t))}catch(o){if(!(o instanceof X||o instanceof SyntaxError))throw o}}async function yu(e){let t=await Eo(ra,e);return nt(t)&&ua(t),t}function pa(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:s,indices:c,material:p}]})=>({name:r,positions:new Float32Array(e,o(s.POSITION),i(s.POSITION)*3),indices:new Uint32Array(e,o(c),i(c)),colour:n.materials[p].pbrMetallicRoughness.baseColorFactor}))}function gd(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],s=[],{positions:c,indices:p}=e;for(let h=0;h<p.length;h+=3){let w=[];for(let $=0;$<3;++$){let y=3*p[h+$],T=3*p[h+($+1)%3],P=c[y+i]-t,W=c[T+i]-t;if(P>0==W>0)continue;let V=P/(P-W),K=[1e3*(c[y]+V*(c[T]-c[y])),1e3*r*(c[y+o]+V*(c[T+o]-c[y+o]))];P>0?w.push(K):w.unshift(K)}w.length===2&&s.push([w[0],w[1]])}return s}function _d(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],s=n.get(t(i[0]))?.shift();for(;s;)r.push(s[0]),s=n.get(t(s[1]))?.shift();r.length>2&&o.push(r)}return o}function vu(e){let t=e.positions,[n,o,i,r,s,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let h=0;h<t.length;h+=3)i=Math.min(i,t[h]),r=Math.max(r,t[h]),s=Math.min(s,t[h+1]),c=Math.max(c,t[h+1]),n=Math.min(n,t[h+2]),o=Math.max(o,t[h+2]);let p=n+(o-n)*.50137;return{loops:_d(gd(e,p)),left:1e3*i,right:1e3*r,floor:1e3*s,brim:1e3*c,cut_y:-1e3*p}}function wd(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>_d(gd(e,n+r*o,"level"))).reduce((r,s)=>hd(s)>1.001*hd(r)?s:r)}function hd(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function ku(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,s],c)=>{let[p,h]=i[(c+1)%i.length];if(!(Math.min(s,h)>t||Math.max(s,h)<t))for(let w of s===h?[r,p]:[r+(t-s)/(h-s)*(p-r)])n=Math.min(n,w),o=Math.max(o,w)});return n<=o?[n,o]:[e.left,e.right]}var $d=40,C$=2e3,xu=0;async function bd(e){let t=await er({kind:"glb",gauge:e}),n=pa(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function ar(e){let[t,n]=await Promise.all([Ro(e),bd(e)]),o=vu(n);return{gauge:t,outline:o,above:wd(n,o)}}async function W$(e){let{pockets:t}=await Ro(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:$d},(i,r)=>`${(n*(r+1)/$d).toFixed(4)} mm`);return Ro({...e,depth:o})}function Qn(){I$()}async function I$(){let e=A(u.run.now,"/pour/mould");if(typeof e!="string")return;let t=++xu,n=Fo(e,u.files?.moulds);try{let[o,i]=await Promise.all([W$({file:n}),bd({file:n})]);t===xu&&S({measured:{mould:n,gauge:o,outline:vu(i)},measuring_failed:void 0})}catch(o){if(t!==xu)return;if(!(o instanceof X))throw o;S({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Qn,C$)}}var B$=30,yd=0,Su=!1,Tu=!1;function Pu(e,t,n){let o=t==="mesh"?u.mesh:void 0;S({mould:{way:t,title:n,open:e,is_old:!1,shapes:{}},mesh:o,typed:void 0}),Au()}var di=()=>S({mould:void 0,mesh:void 0}),lr=(e,t,n)=>Pu(fu(lo,e),t,n);async function vd(e,t){let n=await Eo(lo,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&ee(n,{now:{...n.now,name:""}}),Pu(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function kd({id:e,file:t,text:n}){let o=t?await Eo(lo,t,e):fu(lo,JSON.parse(n),e);Pu(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var Me=()=>u.mould,me=()=>Me().open.now,at=(e,t)=>Zn(Me().open,Ge(me(),e,t)),N$=["name","note","owned","unmould_after"];function Ru(e){let t=me(),n=Object.keys({...e,...t}).filter(s=>e?.[s]!==t[s]);(!e||n.some(s=>!N$.includes(s)))&&ee(Me(),{is_old:!0});let i=n.some(s=>Me().complaint?.field===`/${s}`),r=n.some(s=>!["name","note"].includes(s));(Me().is_old||i||r)&&Au()}function Au(){clearTimeout(yd),yd=window.setTimeout(()=>{z$()},B$)}async function z$(){if(Su)return void(Tu=!0);let{mould:e}=u;if(!e)return;let t=e.open.now;if(!(!Mn(t,"shape")&&!Mn(t,"mesh"))){if(rs(t).length)return ee(e,{complaint:void 0});Su=!0;try{let n=lo.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await ar(o);e.open.now===t&&ee(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof X))throw n;e.open.now===t&&Du(n)}finally{Su=!1,Tu&&Au(),Tu=!1}}}function Du(e){let{field:t,problem:n,remedy:o}=e.complaint,i=t?`${n}; ${o}`:e.message;ee(Me(),{complaint:{field:Qm(me(),t),line:i}})}var xd=e=>[...new Set(e.flatMap(t=>u.formulas[t]??[]))],Sd=e=>e.filter(t=>t.theirs),co=e=>Sd(xd(e==="apart"?["apart"]:["pour","pipe"]))[0],ma=()=>Sd([u.run,...xd(Ut)]);var cs=()=>u.formulas.apart?"apart":"run",Td=e=>S({dangers:{...u.dangers,[cs()]:e}});function Pd(e){let t=e.cautions.filter(n=>n.severity==="danger");Td(t.map(({text:n,topic:o})=>({text:n,is_of_heat:o==="heat"})))}function Rd(e){H$(e)&&Td([{text:gn(e),is_of_heat:!1}])}var H$=({problem:e})=>/lye[- ]heavy|superfat\b[^;]*?(\s[-−]\d|below (zero|0))/i.test(e);var j$=400,U$=2e3,da=0;function ps(){clearTimeout(da),da=window.setTimeout(()=>{En()},j$)}async function En(){clearTimeout(da);let{run:e}=u;try{await as(e),nt(e)&&!e.theirs&&e===u.run&&ps()}catch(t){if(!(t instanceof X))throw t;t.may_pass&&(da=window.setTimeout(()=>{En()},U$))}}var Ad=Promise.resolve();function ur(){let e=Ad.then(J$);return Ad=e.catch(()=>{}),e}async function J$(){for(let e of Ut){let t=u.formulas[e];!t||!nt(t)||t.theirs||(t.shipped&&e!=="apart"&&await nd(u.run),await as(t))}}function Dd(e){let t=u.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=Fo(String(n?.mould??""),u.files?.moulds);return{file:tr("trial.run.json",u.files?.runs??[]),run:{schema:"brimwright.run/1",name:String(t.name??""),sell:t.sell??"",spoilage:t.spoilage??"",pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...q$(t)}}}function q$(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var po=new Map,fa=new Set,ms=()=>new Set(Ut.flatMap(e=>u.formulas[e]??[]));async function Md(){let e=V$(),t=new Set([...ms()].map(({file:n})=>n));for(let n of po.keys())!e.has(n)&&!t.has(n)&&po.delete(n);for(let n of fa)e.has(n)||fa.delete(n);for(let n of e)po.has(n)||po.set(n,await ds(n))}async function ds(e,t=null){if(fa.has(e))return null;try{return await Bm(e,t)}catch(n){if(!(n instanceof X)||n.status!==422)throw n;return fa.add(e),null}}function V$(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(us(o)),o.includes("..")||e.add(o))},n=u.run.now;t(A(n,"/pour/mould")),t(A(n,"/pipe/beads/tips_from"));for(let o of Array.isArray(n.perch)?n.perch:[])t(A(o,"/mould"));for(let o of["pour","pipe"])u.formulas[o]||t(A(n,`/${o}/formula`));for(let{file:o,now:i}of ms()){let r=i.fats_from;typeof r=="string"&&r&&e.add(ns(o)+r).add(r)}return e}async function Ed(){let e=K$();for(let[t,n]of po){let o=await ds(t,n);po.get(t)!==n||o===n||(e.push(t),po.set(t,o))}return e}function K$(){return[...ms()].flatMap(({file:e,version:t})=>{let n=po.get(e)??t;return po.delete(e),n===t?[]:[e]})}var Fd=0,Mu=()=>Fd;function Eu(e){++Fd,S({is_old:!0,changed_beside:e})}var G$=1e3,Y$=450,ha=!1,fi=!1,Fu=0;function vt(){S({is_old:!0}),ha?fi=!0:cr()}async function cr(){if(ha){fi=!0;return}ha=!0,Od(!1);try{do fi=!1,await Z$();while(fi)}finally{ha=!1,Od(!0),Dn()}}var Od=e=>{document.documentElement.dataset.settled=String(e)};function Ld(){let{run:e}=u,{apart:t}=u.formulas,{file:n,now:o}=e;return()=>{let i=e===u.run&&(n===e.file||o===e.now);return t===u.formulas.apart&&(t!==void 0||i)}}async function Z$(){let e=Ld();try{await ur(),await Md(),e=Ld();let{apart:t}=u.formulas;if(co(t?"apart":"run"))return S({is_old:!0});let n=Mu(),o=await Nm(t?Dd(t.file):{file:u.run.file,run:u.run.now});if(window.clearTimeout(Fu),!e())return void(fi=!0);S({plan:o,complaint:void 0}),Pd(o);let i=n===Mu();S({is_old:fi||!i}),i&&S({changed_beside:void 0})}catch(t){if(!(t instanceof X))throw t;if(!e())return void(fi=!0);Q$(t)}}function Q$(e){S({is_old:!0}),window.clearTimeout(Fu);let t=()=>{S({complaint:e.complaint}),Rd(e.complaint)};u.complaint||!u.plan?t():Fu=window.setTimeout(t,Y$),e.may_pass&&window.setTimeout(vt,G$)}var ga=e=>Object.values(u.formulas).includes(e),Cd=e=>`${String(A(e,"/pour/formula"))}
${String(A(e,"/pipe/formula"))}`;function X$(e,t){A(e,"/pour/mould")!==A(t,"/pour/mould")&&Qn(),Cd(e)!==Cd(t)&&mi(),vt(),ps()}var eb=vt;function tb(e,t){for(let n of["pour","pipe"]){if(u.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String(A(r,o)??"").endsWith(os(t))?Ge(r,o,e.file):r;bu(u.run,i),i(u.run.now)!==u.run.now&&Zn(u.run,i(u.run.now))}}function Wd(){ao("edited",({file:e,before:t})=>{e===u.run?X$(t,e.now):ga(e)?eb():e===u.mould?.open&&Ru(t)}),ao("gave_way",({file:e})=>{if(e===u.mould?.open)return Ru();e===u.run&&(Qn(),mi().then(vt)),vt()}),ao("unwritten",({file:e})=>{e===u.run?En():ga(e)&&vt()}),ao("conflict",({file:e})=>{ga(e)&&S({is_old:!0})}),ao("copied",({file:e,from:t})=>{ga(e)&&tb(e,t),e===u.run&&(localStorage.setItem("run",e.file),vt())})}var fs=()=>S({own_fats:{}});function pr(e){let t=Ou(e);return Array.isArray(t)?[...t,...u.fats]:u.fats}function Ou(e){let t=u.formulas[e],n=A(t?.now,"/fats_from");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=`${t.file}
${n}`,i=u.own_fats[o];return i||(Id(o,"waiting"),nb(n,t.file).then(r=>Id(o,r)),"waiting")}var Id=(e,t)=>S({own_fats:{...u.own_fats,[e]:t}});async function nb(e,t){for(let n of new Set([ns(t)+e,e])){let o=await ob(n);if(Array.isArray(o?.fats))return o.fats.map(ib)}return"none"}async function ob(e){try{return Rt((await _n(e)).text)}catch{return}}function ib(e){return{...{id:String(e.id??""),name:String(e.name??e.id??"")},own:rb(e.saponification_value)}}function rb(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var mr=[],hs;function _a(){mr.length=0;for(let{file:e,shipped:t}of u.files?.moulds??[])t||mr.push(e);hs===void 0&&Nd()}function Bd(e){let t=u.own_moulds[e];return!t&&e!==hs&&!mr.includes(e)&&mr.push(e),hs===void 0&&mr.length&&Nd(),t}async function Nd(){for(;(hs=mr.shift())!==void 0;){let e=hs,t=await sb(e);S({own_moulds:{...u.own_moulds,[e]:t}})}}async function sb(e){try{let{pockets:t}=await Ro({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof X))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Hd=()=>S({own_tips:{}}),Lu=!1;function jd(){return!u.tips&&!Lu&&(Lu=!0,jm().then(e=>S({tips:e}),Jd).finally(()=>Lu=!1)),u.tips??[]}function Ud(e){let t=us(e),n=u.own_tips[t];return n||!e||u.typed?n??[]:(zd(t,[]),_n(t).then(({text:o})=>zd(t,ab(o)),Jd),[])}var zd=(e,t)=>S({own_tips:{...u.own_tips,[e]:t}});function ab(e){let t=Rt(e)?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function Jd(e){if(!(e instanceof X))throw e}var qd=700,Vd=!1;function Kd(){if(Vd)return;Vd=!0;let e=()=>{Wu().then(()=>window.setTimeout(e,qd),()=>window.setTimeout(e,3*qd))};e()}var Cu;function Wu(){return Cu??=lb().finally(()=>Cu=void 0),Cu}async function lb(){for(let t of[u.run,u.mould?.open])t&&await gu(t,ds,()=>{});if(!u.run.file)return;for(let t of ms())await ub(t);let[e]=await Ed();e!==void 0&&await cb(e)}async function ub(e){await gu(e,ds,()=>Eu(e.file))&&(fs(),vt())}async function cb(e){Eu(e),await _u(),fs(),Hd(),S({measured:void 0}),Qn(),_a(),await mi(),vt()}var Gd="examples/spring_order.run.json";async function Yd(){let e=await Xi();S({files:e});try{await dr(pb(e))}catch(o){let i=o instanceof X?o.message:`The run opened last is no run any more: ${String(o)}`;S({fault:i,view:"start"}),localStorage.removeItem("run")}let[t,n]=await Promise.all([zm(),Hm()]);S({fats:t,catalogue:n})}function pb(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(r=>r.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Gd)?Gd:e.runs[0]?.file??"")}async function dr(e){if(!e)return S({view:"start"});u.run.file&&nt(u.run)&&await En();let t=await Eo(ss,e);S({view:"run",run:t,formulas:{},past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0}),localStorage.setItem("run",t.file),nt(t)&&(ua(t),ps());let n=cr();Qn(),await Promise.all([n,mi()]),Kd()}async function Zd(e){let t=u.run.now,n=t.losses??{},o={schema:"brimwright.run/1",name:e.name,note:`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,sell:e.cavities,spoilage:t.spoilage??"0 %",pour:{mould:e.mould,formula:e.formula,line:{below_brim:e.deep_mm>15?"5 mm":"0 mm"}},losses:{pour:n.pour??{}},scales:t.scales??{}};t.money&&(o.money=t.money);let{file:i}=await rr({kind:ss,name:Ao(e.name,".run.json"),text:Jt(o)});await dr(i)}var Iu=l`<span aria-hidden="true">⚠</span> Danger`;function gs(e,t="",n){let o=hi(e,n);return o.length?l`<div class="dangers" id=${t||f}>
    ${o.map(i=>l`<p class="danger"><strong>${Iu}</strong> ${i}</p>`)}
  </div>`:f}function hi(e,t){let n=u.dangers[e==="apart"?"apart":"run"].filter(s=>!s.is_of_heat).map(s=>s.text).filter(s=>t===void 0||mb(s,t));if(e==="apart")return n;let o=s=>String(u.formulas[s]?.now.name??""),[i,r]=[o(e),o(e==="pour"?"pipe":"pour")];return n.filter(s=>!r||!s.includes(r)||i!==""&&s.includes(i))}function mb(e,t){let n=/\bBatches of (\d+) pieces?: /.exec(e);return!n||Number(n[1])===t}function Qd(){let e=u.view==="start"||cs()==="apart",t=u.dangers.run.map(({text:n})=>({from:e?`In the run "${String(u.run.now.name??u.run.file)}": `:"",text:n}));return[...u.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var Bu=()=>Qd().length>0;function Xd(){let e=Qd(),t=hb();return!e.length&&!t?f:l`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?l`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>l`<p class="danger"><strong>${Iu}</strong> ${n}${o}</p>`)}
          </div>`:f}
    ${t?l`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${db()?l`<button type="button" @click=${fb}>To the question</button>`:f}
          </div>`:f}
  </section>`}var db=()=>co(cs())!==void 0&&u.view!=="start";function fb(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function hb(){if(!u.run.file||u.view==="reading")return"";let e=co(cs());return e?`${e.file} changed underneath: what is struck through is of neither text. Say which is to stay.`:u.is_old&&u.changed_beside?`${u.changed_beside} changed underneath: what is struck through is not to be weighed.`:""}var Nu=e=>e==="run"?u.run:u.formulas[e],zu=e=>Nu(e)?.now,M=(e,t)=>A(zu(e),t),Ee=(e,t)=>String(M(e,t)??"");function Oo(e,t){let n=M(e,t);return Array.isArray(n)?n:[]}function Xe(e,t,n){let o=M(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function wt(e,t,n){let o=Nu(e);!o||A(o.now,t)===n||(wu(`${e} ${t}`),Zn(o,Ge(o.now,t,n)))}function ef(e,t){let n=Nu(e);n&&(wu(),S({typed:void 0}),Zn(n,t(n.now)))}var gb="examples/plain_bars.run.json";function fr(e){fs(),S({view:"formula",formula_of:e,picking:void 0,typed:void 0}),window.scrollTo(0,0),requestAnimationFrame(()=>document.querySelector("#formula-title")?.focus({preventScroll:!0}))}async function Hu(e){let t=["pour","pipe"].find(n=>u.run.file&&u.formulas[n]?.file===e);if(t)return fr(t);u.run.file||await dr(gb),await _b(e)}async function _b(e){let t={past:u.past,future:u.future};S({run_steps:t,past:[],future:[]});try{uo("apart",await yu(e))}catch(n){throw S({...t,run_steps:void 0}),n}S({plan:void 0,complaint:void 0}),fr("apart"),cr()}async function _s(){let e=u.formulas.apart!==void 0;return e&&!await wb()?!1:(S({view:"run",typed:void 0}),e&&await cr(),window.scrollTo(0,0),!0)}async function wb(){try{await ur()}catch(t){if(!(t instanceof X))throw t;return S({complaint:t.complaint}),!1}if(u.formulas.apart?.theirs)return Yn("Say first which text of the formula is to stay."),window.scrollTo(0,0),!1;uo("apart",void 0);let e={...u.dangers,apart:[]};return S({dangers:e,...u.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function ju(e){let{file:t}=u.formulas.apart;await _s()&&wt("run",`/${e}/formula`,t)}var $b=e=>({schema:"brimwright.formula/1",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),tf=e=>of($b(e));async function nf(e,t){let{$schema:n,...o}=JSON.parse((await _n(e)).text);await of({...o,name:t},e)}async function of(e,t){let n=Ao(String(e.name),".formula.json"),{file:o}=await rr({kind:ra,name:n,text:Jt(e),from:t});await Hu(o)}function Uu(e){return Math.min(u.batch,e.batches.length-1)}function wa(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,s=n[Uu(e)],{pour:c,pipe:p,dust:h,lye_pot:w,bottles:$}=s;return{...r,pour:c,pipe:p,dust:h,lye_pot:w,bottles:$,batch:s,whippings:p?.whippings??[],whole:e}}var kt=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,bb=e=>e.cut?["loaf","loaves"]:["cast","casts"];function qt(e,{pieces:t,casts:n}){let o=e.cut?kt(t,"bar"):kt(t,"piece");return n===t?o:`${o} from ${kt(n,...bb(e))}`}var mo=e=>e===1?"once":`${e} times`,hr=e=>e.batches.length>1,$t=e=>e.pieces.batches>1;function Ju(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function rf(e,{count:t,numbers:n}){return $t(e)?hr(e)?`made ${mo(t)}: ${t===1?"batch":"batches"} ${Ju(n.map(String))} of ${e.pieces.batches}`:`made ${mo(t)}`:""}function Xt(e){return $t(e.whole)?`one batch, ${qt(e.whole,e.batch)}`:""}var sf=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function gi(e,t){return sf(e)?`one whipping: ${qt(e.whole,t)}${t.count>1?`, whipped ${mo(t.count)}`:""}`:""}var af=({whippings:e})=>e.flatMap(t=>Array.from({length:t.count},()=>t)),$a=e=>$t(e.whole)||sf(e),ba=(e,t)=>`${kt(e,"filling")} of ${kt(t,"cavity","cavities")}`;var va=28.349523125,pf=25.4,yb=29.5735295625;function wn(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function N(e,t){return vb(wn(e,t))}var vb=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Fn(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${wn(e,t)} %`:qu(e)?"just below 0 %":"0.0 %"}var qu=e=>e<0||Object.is(e,-0),mf=e=>Math.abs(e-Math.round(e))<1e-6;function lf(e){return e?[0,1,2,3].find(t=>mf(e*10**t))??3:0}function uf(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function kb(e){return[0,1,2].find(t=>e.every(n=>mf(n*10**t)))??3}function ka(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function At(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-kb([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var df=.001;function ya(e,t,n,o,i=1e-9){let r=10**n;return wn(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var cf=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function ff(e){if(!cf.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return cf.find(t=>Math.abs(t*va-e)<.6*df)}function Ue(e,t,n="nearest"){let o=t.scale_step_g||.1,i=ff(o),r=Math.min(.6*df,o/2),s=i?ya(t.g,1,uf(o),n):ya(t.g,1,lf(o),n,r),c=i?ya(t.g,va,lf(i),n,r):ya(t.g,va,uf(o/va),n),[p,h]=[`${t.g_text??s} g`,`${t.oz_text??c} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[h,p]:ka(e,p,h)}function hf(e){let t=ff(e);return t?`${t} oz`:`${N(e,3)} g`}var Pe=(e,t,n=1,o="nearest")=>Ue(e,{g:t,scale_step_g:10**-n},o);function xt(e,t,n=1){return ka(e,`${wn(t,n)} ml`,`${wn(t/yb,2)} fl oz`)}function Dt(e,t){return ka(e,`${N(t,1)} mm`,xb(t))}function xb(e){let t=Math.round(Math.abs(e)/pf*16),n=e<0&&t?"-":"",o=t%16,i=16;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/16),s=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",s].filter(Boolean).join(" ")} in`}var _i=([e])=>e,ae=([e,t])=>t?`${e} (${t})`:e;function gf(e,t){return ka(e,`${wn(t,0)} \xB0C`,`${wn(t*1.8+32,0)} \xB0F`)}function gr(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??pf;return n*o}function _r(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var xa=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function Lo(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var _f=e=>e.goes_into==="lye",wr=e=>/^(NaOH|KOH)\b/.test(e.name),Sb=e=>wr(e)?"down":"nearest",$n=(e,t)=>Ue(e,t,Sb(t)),Sa=e=>_i($n("metric",e));function $r(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>_f(i)),n=({one:i})=>/^Water/.test(i.name),o=({one:i})=>wr(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function Ta(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!_f(t))}function br(e,t=()=>{}){if(!e.theirs)return f;let n=e.theirs.text===null,o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{cd(e),t()};return l`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} has ${n?"been taken away":"changed"} underneath</h2>
    <p>Another hand or tab wrote the file. Nothing typed here was written over it. Which is to stay?</p>
    ${e.failed?l`<p class="complaint" role="status">Not taken: ${e.failed}.</p>`:f}
    <div class="choice">
      ${n?f:l`<button type="button" @click=${()=>ud(e)}>Take what is in the file</button>`}
      <button type="button" @click=${i}>Keep what is on this page</button>
    </div>
  </section>`}function wf(e){return e.theirs||!e.set_aside?f:l`<section class="banner" aria-label="What you typed">
    <p>This is what another hand wrote. What you typed is still here.</p>
    <button type="button" @click=${()=>pd(e)}>Change to the other text</button>
  </section>`}var wi={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},$f=e=>(...t)=>({_$litDirective$:e,values:t}),Pa=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:DR}=Tm;var bf=e=>e.strings===void 0;var Tb={},yf=(e,t=Tb)=>e._$AH=t;var Mt=$f(class extends Pa{constructor(e){if(super(e),e.type!==wi.PROPERTY&&e.type!==wi.ATTRIBUTE&&e.type!==wi.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!bf(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===hn||t===f)return t;let n=e.element,o=e.name;if(e.type===wi.PROPERTY){if(t===n[o])return hn}else if(e.type===wi.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return hn}else if(e.type===wi.ATTRIBUTE&&n.getAttribute(o)===t+"")return hn;return yf(e),t}});var lt=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function Vu(e,t){return A(zu(e),t)}function Xn(e,t){let n=u.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return yr(e)?gn(n):void 0}function Et(e,t){return u.complaint?.field===t?Xn(e,t):void 0}function yr(e){let t=u.complaint,n=e==="run"?u.run.file:u.formulas[e]?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function Pb(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(Vu(e,n)??{}).length>1?t:n}function Co(){let e=u.complaint;if(e)for(let t of["run",...Ut])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Xn(t,n)&&document.getElementById(lt(t,n));if(o)return o}}function Rb(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=Ab(e,n);return o&&xa(t)?`${t.trim()} ${o}`:t}function Ab(e,t){return _r(Vu(t,e.at))||e.unit||""}var en=(e,t,n)=>t||n?l`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:f,Ku=!1;addEventListener("pointerdown",()=>Ku=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Ku=!1,!0);var vf=()=>S({typed:void 0});function Gu(){Ku?addEventListener("pointerup",()=>setTimeout(vf),{once:!0}):vf()}function v(e){let t=e.of??"run",n=lt(t,e.at),o=Vu(t,e.at),i=u.typed?.key===n?u.typed.text:o===void 0?"":String(o),r=Xn(t,e.at),s=h=>{let w=h.target.value;S({typed:{key:n,text:w}});let $=Rb(e,w);wt(t,$===void 0&&e.takes_part?Pb(t,e.at):e.at,$)},p=(u.typed?.key===n&&typeof o=="string"&&o!==i?`taken as ${o}`:"")||e.hint;return l`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${r?"wants":""}"
  >
    <label for=${n}>${e.label}</label>
    <input
      id=${n}
      .value=${Mt(i)}
      @input=${s}
      @blur=${Gu}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${r?"true":"false"}
      aria-describedby=${[r||p?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||f}
    />
    ${en(n,r,p)}
  </div>`}function Yu(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var bn=e=>()=>document.getElementById(e),Io=(e,t)=>bn(lt(e,t)),$i=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),Db=()=>document.activeElement;function Ra(e){requestAnimationFrame(()=>Yu(e()))}function vr(e,t,n,o=Db){Yn(t),ef(e,n),Ra(o)}function ut(e,t,n,o,i){vr(e,t,r=>Ge(r,n,o),i)}var Wo=(e,t,n)=>`${lt(e,t)}-${n}`;function Fe(e,t){let n=Et(e,t);return n?l`<p id=${lt(e,t)} class="complaint" tabindex="-1">${n}</p>`:f}var kf=(e,t,n)=>t.map(([o,i])=>l`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function Ft(e,t,n,o){return l`<div class="choice" role="group" aria-label=${e}>${kf(t,n,o)}</div>`}function Y({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:s,puts:c,then:p,hint:h}){let w=i?Wo(e,n,t.replaceAll(/\W+/g,"-")):lt(e,o),$=i?void 0:Et(e,o),y=T=>{if(T===r)return;let P=s.find(([W])=>W===T)[1];ut(e,`${t}: ${P}`,n,c(T),p&&Io(e,p(T)))};return l`<div class="field asked ${$?"wants":""}">
    <p class="question" id="${w}-label">${t}</p>
    <div
      class="choice"
      role="group"
      id=${w}
      tabindex="-1"
      aria-labelledby="${w}-label"
      aria-describedby=${$||h?`${w}-said`:f}
    >
      ${kf(r,s,y)}
    </div>
    ${en(w,$,h)}
  </div>`}function Zu(e,t,n,o){let i=lt("run",e),r=Et("run",e),s=()=>ut("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return l`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:f}
        @click=${s}
      >
        ${t}
      </button>
    </div>
    ${en(i,r)}`}function On({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:s,take:c}){let p=lt(t,n),h=Xn(t,n),w=s??Ee(t,n),$=!w||o.some(([P])=>P===w),y=[["",i],...$?[]:[[w,w]],...o];return l`<div class="field choose ${h?"wants":""}">
    <label for=${p}>${e}</label>
    <select
      id=${p}
      @change=${P=>{let W=P.target.value;c?c(W):wt(t,n,W||!r?W:void 0)}}
      aria-invalid=${h?"true":"false"}
      aria-describedby=${h?`${p}-said`:f}
    >
      ${y.filter(([P])=>P||r||!w).map(([P,W])=>l`<option value=${P} .selected=${Mt(P===w)}>${W}</option>`)}</select
    >${en(p,h)}
  </div>`}function fo(e,t,n=[]){let o=Fo(Ee("run",t),n);return On({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function tn({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:s}){let c=Wo(e,t,"part"),p=Wo(e,t,"add");return M(e,t)===void 0?l`<p class="choice">
      <button type="button" id=${p} @click=${()=>ut(e,`${o} added`,t,r,$i(c))}>
        ${i}
      </button>
    </p>`:l`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Take away ${n}"
        @click=${()=>ut(e,`${o} taken away`,t,void 0,bn(p))}
      >
        Take away
      </button>
    </div>
    ${Fe(e,t)} ${s()}
  </div>`}var xf=(e,t)=>`folded ${e} ${t}`,Sf=(e,t)=>pu(xf(e,t));function fe({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let s=xf(e,t);(i||n.some(h=>Xn(e,h)))&&pu(s);let c=u.open.has(s);return l`<details .open=${c}>
    <summary @click=${h=>{h.preventDefault(),ir("open",s)}}>${o}</summary>
    ${c?l`<div class="folded">${r()}</div>`:f}
  </details>`}var re=({of:e="run",at:t})=>Oo(e,t),Oe=({of:e="run",at:t},n)=>Wo(e,`${t}/${n}`,"item"),Aa=({of:e="run",at:t},n,o)=>Wo(e,`${t}/${n}`,o),Mb=({of:e="run",at:t})=>lt(e,t);function ws(e,t,n,o){let{of:i="run",at:r,stays:s,and:c=p=>p}=e;vr(i,t,p=>c(Ge(p,r,n.length||s?n:void 0),n.length),o)}function Je(e,t,n){let o=re(e);ws(e,`${n} added`,[...o,t],$i(Oe(e,o.length)))}function Eb(e,t,n){let o=re(e).filter((s,c)=>c!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);ws(e,`${n} taken away`,o,r?bn(Aa(e,i,"drop")):Io(e.of??"run",e.at))}function Fb(e,t,n,o){let i=[...re(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let s=n<0?"earlier":"later",p=t+n===0||t+n===i.length-1?n<0?"later":"earlier":s;ws(e,`${o} moved ${s}`,i,bn(Aa(e,t+n,p)))}function Ye(e,t,n){let o=re(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return f;let s=(c,p,h)=>l`<button
      type="button"
      id=${Aa(e,t,p)}
      ?disabled=${h}
      aria-label="${n} ${p}"
      @click=${()=>Fb(e,t,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return l`<div class="tools">
    ${r?l`${s(-1,"earlier",t===0)} ${s(1,"later",t===o)}`:f}
    ${i?l`<button
            type="button"
            id=${Aa(e,t,"drop")}
            aria-label="Take away ${n}"
            @click=${()=>Eb(e,t,n)}
          >
            ×
          </button>`:f}
  </div>`}function qe(e,t,n){let o=Mb(e),i=Et(e.of??"run",e.at);return l`${en(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:f} @click=${n}>
      ${t}
    </button>`}function Tf(e){let t=Ee(e,"/measured_density");return l`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${v({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${v({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${Wb(e)}
    ${fe({of:e,name:"density",pointers:["/measured_density"],summary:`Density measured${t&&`: ${t}`}`,body:()=>v({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Ob=[["unsaid","Not said"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Pf={after:"",mass:""},Rf=3,Lb={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{finally_lost:"",time_constant:""}},weighed:{drying:{weighings:Array.from({length:Rf},()=>Pf)}}};function Cb(e){return M(e,"/drying/weighings")!==void 0?"weighed":M(e,"/drying")!==void 0?"law":M(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Wb(e){let t=Cb(e);return l`${Y({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:Ob,puts:o=>({...Xe(e,"",["drying","water_lost_in_cure"]),...Lb[o]})})}
  ${t==="share"?l`<div class="row">
          ${v({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:f}
  ${t==="law"?l`<div class="row">
          ${v({label:"Of the batter's water, gone in the end",of:e,at:"/drying/finally_lost",unit:"%"})}
          ${v({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_constant",unit:"days"})}
        </div>`:f}
  ${t==="weighed"?Ib(e):f}`}function Ib(e){let t={of:e,at:"/drying/weighings",least:Rf};return l`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${re(t).map((n,o)=>l`<div class="row named" id=${Oe(t,o)}>
          ${v({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${v({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${Ye(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${qe(t,"One more weighing",()=>Je(t,Pf,"weighing"))}`}var Bb=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Da=e=>pr(e).map(t=>[t.id,t.name]),Af=["unsaid","Not said"],Df=["none","Holds none"],Mf=e=>e===void 0?"unsaid":e==="none"?"none":"some",Nb=e=>t=>t==="some"?e:t==="none"?"none":void 0;function Ef(e,t){return Qu(e,`${t}/contains_fat`,[Af,Df,["some","Holds fat"]],Da(e))}function Qu(e,t,n,o){let i=Mf(M(e,t)),r=n.some(([s])=>s===i)?i:void 0;return l`${Y({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:Nb({fat:"",share:""})})}
  ${i==="some"?l`<div class="row">
          ${On({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${v({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:f}`}var zb=[Af,Df,["some","Holds acid"],["typed","By what it takes up"]],Hb={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Xu(e,t){let n=`${t}/acid`,o=M(e,`${n}/takes_up`)!==void 0?"typed":Mf(M(e,n));return l`${Y({of:e,question:"Acid in it",at:n,chosen:o,answers:zb,puts:i=>Hb[i]})}
  ${o==="some"?l`<div class="row">
          ${On({label:"Which acid",of:e,at:`${n}/acid`,answers:Bb.map(i=>[i,i]),unsaid:"choose ..."})}
          ${v({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:f}
  ${o==="typed"?l`<div class="row">
          ${v({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:f}
  ${o==="some"||o==="typed"?ec(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):f}`}function ec(e,t,n){let o=M(e,t)===!0?"yes":"no";return Y({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var jb=["tsp/lb","tbsp/lb","tsp/kg"],Ma=["%","g/kg",...jb].flatMap(e=>[`${e} of fats`,`${e} of batter`]),Of=[...Ma,"% of finished soap","g/kg of finished soap"];function Ff(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Ea(e,t,n,o,i=!1){let r=lt(e,t),[s,c]=Ff(Ee(e,t),o),p=u.typed?.key===r?u.typed.text:s,h=Xn(e,t),w=(y,T)=>{let P=`${y.trim()} ${T}`.trim();wt(e,t,i&&!y.trim()?void 0:P),Dn()},$=y=>{let T=y.target.value,[P,W]=Ff(T,o);S({typed:{key:r,text:T}}),w(P,W||c)};return l`<div class="field rate ${h?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${Mt(p)}
        @input=${$}
        @blur=${Gu}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${h?"true":"false"}
        aria-describedby=${h?`${r}-said`:f}
      />
      <select
        aria-label="${n}: of what"
        @change=${y=>w(p,y.target.value)}
      >
        <option value="" .selected=${Mt(c==="")}>of what?</option>
        ${o.map(y=>l`<option value=${y} .selected=${Mt(y===c)}>${y}</option>`)}
      </select>
    </div>
    ${en(r,h)}
  </div>`}function Ub(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var Jb=.01+1e-9;function Fa(e,t){let{sum:n,unread:o}=Ub(t),i=s=>`${String(Math.round(s*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=Jb?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var Cf=(e,t)=>pr(e).find(n=>n.id===t)?.name??t,$s=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),Oa=e=>re($s(e));function Wf(e){let t=Oa(e),n=u.picking?.of===e&&u.picking.row===t.length;return l`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>qb(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Fa("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${n?Bf(e):qe($s(e),"Add a fat",()=>If(e,t.length))} ${Xb(e)}
  </section>`}function qb(e,t,n){let o=`/fats/${t}`,i=Cf(e,String(n[t].fat??""))||"Which fat?",r=Et(e,`${o}/fat`)??Et(e,o),s=u.picking?.of===e&&u.picking.row===t;return l`<li class="formula-row" id=${Oe($s(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${lt(e,`${o}/fat`)}
        aria-expanded=${s?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>s?tc():If(e,t)}
      >
        ${i}
      </button>
      ${v({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${Ye($s(e),t,i)}
    </div>
    ${r?l`<p class="complaint">${r}</p>`:f} ${s?Bf(e):f}
    ${fe({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Kb(n[t])}`,body:()=>Zb(e,t)})}
  </li>`}function If(e,t){S({picking:{of:e,row:t,text:""}}),Ra(bn("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function tc(){let e=u.picking;S({picking:void 0}),e&&Ra(Io(e.of,e.row<Oa(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function Lf(e,t){let{row:n}=u.picking,o=Oa(e);S({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};ws($s(e),`${Cf(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],Io(e,`/fats/${n}/share`))}function Vb(e,t){let n=t.toLowerCase().split(/\s+/).filter(Boolean),o=`${e.name} ${e.id.replaceAll("_"," ")}`.toLowerCase();return n.every(i=>o.includes(i))}function Bf(e){let{row:t,text:n}=u.picking,o=Oa(e).map(p=>p.fat),i=pr(e).filter(p=>Vb(p,n)),r=i.filter(p=>!o.includes(p.id)||o[t]===p.id);return l`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input id="find-fat" .value=${n} @input=${p=>{u.picking.text=p.target.value,Dn()}} @keydown=${p=>{p.key==="Escape"&&tc(),p.key==="Enter"&&r.length===1&&Lf(e,r[0].id)}} autocomplete="off" spellcheck="false" />
      </div>
      <button type="button" @click=${tc}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?i.length===1?"One fat":`${i.length} fats`:"No fat of that name. One that is not here is described in a file of your own fats."}
    </p>
    <div class="choice">
      ${i.map(p=>{let h=o.includes(p.id)&&o[t]!==p.id;return l`<button
          type="button"
          ?disabled=${h}
          aria-pressed=${o[t]===p.id?"true":f}
          @click=${()=>Lf(e,p.id)}
        >
          ${p.name}${h?" (is in it)":""}
        </button>`})}
    </div>
  </div>`}function Kb(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be said":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Gb=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Yb={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Zb(e,t){let n=`/fats/${t}/saponification_value`,o=M(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=M(e,`/fats/${t}/confirmed`)!==void 0,s=(c,p)=>v({label:c,of:e,at:p,number:!0,short:!0});return l` ${v({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${Y({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Gb,puts:c=>Yb[c],hint:Qb(e,Ee(e,`/fats/${t}/fat`))})}
  ${i==="one"?l`<div class="row">${s("Saponification value",n)}</div>`:f}
  ${i==="range"?l`<div class="row">
          ${s("Lowest",`${n}/low`)} ${s("Typical",`${n}/typical`)} ${s("Highest",`${n}/high`)}
        </div>`:f}
  ${i!=="published"||r?ec(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):f}`}function Qb(e,t){let n=pr(e).find(i=>i.id===t),o=n?.saponification_value_mg_koh_per_g;return o?`Published: ${o.low} to ${o.high} (${o.source}).`:n?.own?`In your file: ${n.own}.`:void 0}function Xb(e){let t=Ou(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=Ee(e,"/fats_from");return fe({of:e,name:"own fats",pointers:["/fats_from"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>v({label:"Its name, as it lies beside this formula",of:e,at:"/fats_from",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list above."})})}var Nf="danger-of-superfat";function zf(e,t){return l`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${v({label:"Superfat: of all that is fat, left without lye",of:e,at:"/superfat",unit:"%",described_by:hi(e).length?Nf:void 0})}
    </div>
    ${gs(e,Nf)} ${ey(e)} ${sy(e,t)}
  </section>`}function ey(e){let t=Oo(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return l`${Y({of:e,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>ty(t,i),then:i=>i==="both"?"/alkali/0/saponifies":"/alkali/0/purity"})}
  ${t.map((i,r)=>ny(e,i,r,t.length>1))}
  ${t.length>1?l`<p class="total" role="status">
          ${Fa("The two",t.map(i=>i.saponifies))}
        </p>`:f}`}function ty(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,saponifies:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function ny(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),s=Et(e,i)??Et(e,`${i}/alkali`);return l`<div class="formula-row">
    ${s?l`<p class="complaint">${s}</p>`:f}
    <div class="row">
      ${o||t.saponifies!=="100 %"?v({label:`${r}: share of the saponifying`,of:e,at:`${i}/saponifies`,unit:"%",hint:"By equivalents, not by weight."}):f}
      ${v({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${fe({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Purity that the supplier warrants${oy(t.purity_range)}`,body:()=>iy(e,i)})}
  </div>`}var oy=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function iy(e,t){let n=`${t}/purity_range`,o=M(e,n)!==void 0;return l`${Y({of:e,question:"Warranted range",at:n,chosen:o?"said":"none",answers:[["none","Not said"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?l`<div class="row">
          ${v({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${v({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:f}`}var ry={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function sy(e,t){let n=Object.keys(M(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(ry);return l`${Y({of:e,question:"Water: how do you say it?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:ly(t)})}
    <div class="row">${n.map(r=>ay(e,r))}</div>`}function ay(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?v({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?v({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):v({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function ly(e){if(!(!e||u.is_old))return`It now makes a strength of ${N(e.lye_strength_percent,1)} %; ${N(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${N(e.water_percent_of_fats,1)} % of the fats.`}function Bo(e,t,n){let o=uy(e,t);return fe({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>l`${py(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Hf(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>my(e,i,r))}
        ${v({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function uy(e,t){let n=Oo(e,`${t}/allergens`).length;return[M(e,`${t}/inci`)===void 0?"":"INCI said",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var nc={name:"",share:""},cy={unsaid:void 0,one:"",many:[nc]};function py(e,t,n){let o=M(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=s=>s==="many"&&o?[{...nc,name:o}]:cy[s];return l`${Y({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not said"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?v({label:"INCI name",of:e,at:t}):f}
  ${i==="many"?l`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Hf(e,t,"INCI name","One more INCI name")}`:f}`}function my(e,t,n){return Y({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:M(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Hf(e,t,n,o,i){let r={of:e,at:t};return l`${re(r).map((s,c)=>l`<div class="row named" id=${Oe(r,c)}>
        ${v({label:`${n} ${c+1}`,of:e,at:`${t}/${c}/name`})}
        ${v({label:`Share ${c+1}`,of:e,at:`${t}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${c}`,c)??f} ${Ye(r,c,String(s.name||`${n} ${c+1}`))}
      </div>`)}
  ${qe(r,o,()=>Je(r,nc,n))}`}var dy=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:vy},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:gy},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:_y},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:wy}];function jf(e){return dy.map(t=>{let n={of:e,at:`/${t.list}`},o=re(n),i=(r,s)=>l`<li class="formula-row" id=${Oe(n,s)}>
        ${hy(e,t,n,r,s)} ${t.row(e,`${n.at}/${s}`,r)}
      </li>`;return l`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?l`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:l`<p class="aside">${t.aside}</p>`}
      ${qe(n,t.add,()=>Je(n,fy(t),t.add.replace("Add ","")))}
    </section>`})}function fy(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function hy(e,t,n,o,i){let r=`/${t.list}/${i}`,s=Et(e,r),c=String(o.name||`number ${i+1} of the ${t.list}`);return l`${s?l`<p class="complaint">${s}</p>`:f}
    <div class="row named">
      ${v({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?f:Ea(e,`${r}/rate`,"How much",Ma)}
      ${Ye(n,i,c)}
    </div>`}function oc(e,t,n,o){let i=`${t}/goes_into`,r=M(e,i);return Y({of:e,question:"Goes into",at:i,chosen:r,answers:n,puts:c=>c,hint:o||r?void 0:"The batter, unless you name another place."})}var Uf=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function ic(e,t,n){let o=(s,c,p)=>s?`${c}${String(s)}${p}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(s=>`${t}/${s}`);return fe({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>l` <div class="row">
          ${v({label:"Density in the spoon",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${v({label:"Density of itself",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Ea(e,`${t}/limit`,"The most that the supplier's document allows",Of,!0)}`})}function rc(e,t,n,o){let i=(s,c)=>s===void 0?"":s==="none"?`no ${c}`:c,r=[i(n.contains_fat,"fat"),o?i(n.acid,"acid"):""].filter(Boolean).join(", ");return fe({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>l`${Ef(e,t)} ${o?Xu(e,t):f}`})}var La=(e,t,n)=>Bo(e,t,String(n.name||"it"));function gy(e,t,n){return l`${oc(e,t,Uf,!0)}
    <div class="folds">${rc(e,t,n,!0)} ${ic(e,t,n)} ${La(e,t,n)}</div>`}function Jf(e,t,n){return fe({of:e,name:`${t} place`,pointers:[`${t}/goes_into`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>oc(e,t,Uf,!1)})}function _y(e,t,n){return l`<div class="folds">
    ${ic(e,t,n)} ${La(e,t,n)} ${Jf(e,t,n)} ${rc(e,t,n,!1)}
  </div>`}function wy(e,t,n){return l`${by(e,t)}
    <div class="folds">
      ${ic(e,t,n)} ${La(e,t,n)} ${Jf(e,t,n)} ${rc(e,t,n,!0)}
    </div>`}var $y=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function by(e,t){let n=`${t}/dispersed_in`,o=M(e,n)!==void 0,i=M(e,`${n}/from`);return l`${Y({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:s=>s==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?l`<div class="row">
            ${On({label:"Which oil",of:e,at:`${n}/fat`,answers:Da(e),unsaid:"choose ..."})}
            ${v({label:"g of oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,short:!0})}
          </div>
          ${Y({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:$y,puts:s=>s,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:f}`}var yy=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function vy(e,t,n){let o=(i,r,s)=>fe({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:s});return l`${xy(e,t,n)}
    ${oc(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${Ty(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Goes in as ice: no",()=>ky(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.acid===void 0?"":n.acid==="none"?": none":": some"}`,()=>Xu(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>v({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${La(e,t,n)}
    </div>`}function ky(e,t){let n=M(e,t)===!0?"ice":"liquid";return Y({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function xy(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...Xe(e,t,["replaces","rate"]),[r]:""});return l`${Y({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:Sy,puts:i})}
  ${o==="replaces"?l`<div class="row">
          ${v({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:f}
  ${o==="rate"?Ea(e,`${t}/rate`,"Rate",Ma):f}`}var Sy=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function Ty(e,t){let n=`${t}/composition`,o=typeof M(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(c,p)=>v({label:c,of:e,at:`${n}/${p}`,unit:"%",short:!0});return l`${Y({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Shipped figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?l`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${Qu(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Da(e)])}
          <div class="row">
            ${v({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:l`<div class="row">
          ${On({label:"Shipped figures of",of:e,at:n,answers:yy.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}function oe({key:e,label:t,shown:n,sum:o,size:i="plain",note:r}){let s=u.open.has(e),c=`sum-${e.replaceAll(/[^\w]/g,"-")}`,p=l`<span class="name">${t}${r?l`<small>${r}</small>`:f}</span>
    <span class="value ${i} ${u.is_old?"old":""}"
      ><b>${n[0]}</b>${n[1]?l` <i>${n[1]}</i>`:f}</span
    >`;return o?l`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${s?"true":"false"}
      aria-controls=${s?c:f}
      @click=${()=>ir("open",e)}
    >
      ${p}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
    </button>
    ${s?Py(c,o):f}
  </div>`:l`<div class="figure"><div class="line">${p}</div></div>`}function bi(e,t,n){return oe({key:e,label:t,shown:["",""],sum:n})}function Py(e,t){return l`<div class="sum" id=${e}>
    <p class="formula">${t.formula}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.with.map(([n,o,i])=>l`<tr>
              <th scope="row">${n}</th>
              <td>${o}</td>
              <td>${i??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${t.sources?.length?l`<p class="sources">From: ${t.sources.join("; ")}.</p>`:f}
  </div>`}var Le=(e,t=1)=>`${wn(e,t)} g`,Kf=e=>`${N(e,3)} g`,ho=(e,t)=>_i(Ue("metric",At(e,t),"down")),ot=e=>`${N(e,3)} ml`,Ve=e=>vi(A(u.run.now,e)),kr=(e,t)=>vi(A(u.formulas[e]?.now,t)),xe="the run";function vi(e){return e==null?"not said":typeof e!="object"?String(e):Object.values(e).map(vi).join(", ")}function Gf(e){return{formula:"pieces to make = pieces to sell \xF7 (1 \u2212 spoilage), rounded up to whole casts, or to full moulds where they are all filled; batches as few as the fillings and what sets their size allow, and as even as can be",with:[["to sell",String(e.pieces.sell),xe],["spoilage",Ve("/spoilage"),xe],["to make",String(e.pieces.make)],["cavities",String(e.pieces.cavities),"the mould"],["fillings",String(e.pieces.fillings),"to make \xF7 cavities, rounded up"],...e.batches.map(t=>[kt(t.count,"batch","batches"),qt(e,t)])]}}function Yf(e){return{formula:"mass of one pour = volume to the pour line \xD7 density of the batter",with:[["volume to the line",ot(e.volume_each_ml),`level curve of ${e.mould} at ${N(e.depth_mm,2)} mm`],["density",`${e.density_g_per_ml} g/ml`,e.formula],...e.displaced_ml?[["pushed aside by embeds",ot(e.displaced_ml)]]:[],["one pour",Le(e.mass_each_g,3)]],sources:Wa()}}function Wa(){let e=u.measured?.gauge.measurements?.map(n=>`${n.by} (${ot(n.brimful_ml)} to the brim)`)??[],t=u.measured?.gauge.measurements?.some(n=>n.by==="water");return[...e,...t?["density of water: Kell 1975"]:[]]}function Zf(e){return{formula:"one millimetre = area of the free surface at the pour line \xD7 1 mm",with:[["volume of 1 mm",ot(e.ml_per_mm),`slope of the level curve at ${N(e.depth_mm,2)} mm`],["density",`${e.density_g_per_ml} g/ml`,e.formula],["to the brim",ot(e.brimful_ml)]],sources:Wa()}}function Qf(e,t){return{formula:"weigh for a layer = mass in one piece \xD7 pieces of the batch, with its share of the losses",with:[["from",`${N(t.from_mm,1)} mm`],["to",`${N(t.to_mm,1)} mm`],["volume in one piece",ot(t.volume_each_ml)],["mass in one piece",Le(t.mass_each_g)],["all batter to make",Le(e.make_g)]]}}function Ia(e,t){let n=A(u.run.now,`/losses/${e}`),o=Object.entries(n??{}).map(([i,r])=>[i.replaceAll("_"," "),vi(r),xe]);return{formula:"batter to make = in the pieces + losses, after every ingredient is rounded to the scale",with:[["in the pieces",Le(t.in_pieces_g)],...o,["losses together",Le(t.lost_g)],["to make",Le(t.make_g)]]}}function Ba(e,t){return e==="pipe"?{formula:"density of the whip = weigh-cup's net weight \xF7 its volume; overrun = plain density \xF7 whipped density \u2212 1",with:[["weigh-cup",Ve("/pipe/whip"),xe],["whipped",`${t.density_g_per_ml} g/ml`],["plain",`${t.plain_density_computed_g_per_ml} g/ml`,"computed, before whipping"]]}:{formula:"density = mass of everything \xF7 sum of the volumes, at the pouring temperature",with:[["density",`${t.density_g_per_ml} g/ml`],["temperature",kr(e,"/pour_temperature"),t.formula],["computed",`${t.plain_density_computed_g_per_ml} g/ml`]],sources:["fats: each fat's published density and slope","lye: Lalibert\xE9 and Cooper 2004","volumes taken as additive, good to 1 to 2 %"]}}var yi=e=>e===0?Fn(e):`${e} %`;function Xf(e,t){let{aim:n,effective:o,low:i,high:r,likely_low:s,likely_high:c,doubts:p}=t.superfat_percent;return{formula:"effective superfat = 1 \u2212 alkali weighed \xD7 purity \xF7 alkali that the weighed fats and acids need",with:[["aim",`${n} %`,t.formula],["effective",yi(o),"after rounding fats and alkali to the scales"],["lowest",yi(i),"if every range falls the wrong way"],["highest",yi(r)],...s===void 0||c===void 0?[]:[["likely",`${yi(s)} to ${yi(c)}`,"19 batches in 20, each doubt even over its range and independent of the others"]],...(p??[]).slice(0,3).map(h=>[`doubt: ${h.cause}`,`${Math.round(h.percent_of_variance)} %`,"of the variance"]),["fats",Le(t.fats_g)],["purity",kr(e,"/alkali/0/purity")]],sources:th(e)}}function eh(e){let t=A(u.formulas[e]?.now,"/fats");return Array.isArray(t)?t.map(n=>{let{fat:o,share:i,saponification_value:r}=n;return{id:String(o),share:String(i),own:r}}):[]}function th(e){return eh(e).map(({id:t,own:n})=>{let o=u.fats.find(r=>r.id===t),i=o?.saponification_value_mg_koh_per_g;return n!==void 0?`${o?.name??t}: your lot's saponification value ${vi(n)} mg/g`:i?`${o.name}: ${i.low} to ${i.high} mg/g, ${i.source}`:t})}function Ry(e,t){return{formula:"alkali = [fats \xD7 saponification value \xD7 M(alkali) \xF7 M(KOH) \xD7 (1 \u2212 superfat) + what acids take] \xF7 purity, rounded down to the fine scale",with:[["fats, as rounded",Le(t.fats_g)],["superfat aimed at",`${t.superfat_percent.aim} %`,t.formula],["purity",kr(e,"/alkali/0/purity"),t.formula],["fine scale reads",Ve("/scales/fine/reads"),xe],...t.ingredients.filter(wr).map(n=>[n.name,Sa(n)])],sources:["M(NaOH) 39.997 and M(KOH) 56.105 g/mol, IUPAC atomic weights",...th(e)]}}function ac(e,t){return{formula:"water = pure alkali \xD7 (1 \u2212 strength) \xF7 strength",with:[["asked for",kr(e,"/water"),t.formula],["lye strength",`${N(t.lye_strength_percent,1)} %`,"alkali \xF7 (alkali + water)"],["water : alkali",`${N(t.water_to_pure_alkali,2)} : 1`],["water as a share of the fats",`${N(t.water_percent_of_fats,1)} %`],["large scale reads",Ve("/scales/large/reads"),xe]]}}function nh(e,t,n){if(wr(n))return Ry(e,t);if(/^Water/.test(n.name))return ac(e,t);let o=u.fats.find(r=>r.name===n.name),i=eh(e).find(({id:r})=>r===o?.id)?.share;return o&&i?{formula:"weigh = fats for the batter \xD7 share, rounded to the scale",with:[["fats, as rounded",Le(t.fats_g)],["share",i,t.formula],...sc(n),...qf(n)],sources:[`saponification value: ${o.saponification_value_mg_koh_per_g?.source??"your own"}`,`density: ${o.density_g_per_ml?.source??"estimated"}`]}:{formula:"weigh = rate \xD7 what the rate is of, rounded to the scale",with:[["rate",Ay(e,n.name),t.formula],["fats",Le(t.fats_g)],["batter",Le(t.make_g)],...sc(n),...qf(n)]}}var sc=e=>e.scale_step_g?[["the scale shows",hf(e.scale_step_g),xe]]:[];function qf(e){return e.set_aside_for_colours_g?[["of it set aside to disperse colours",Le(e.set_aside_for_colours_g)]]:[]}function Ay(e,t){for(let n of["additives","fragrances","colours"]){let o=A(u.formulas[e]?.now,`/${n}`);for(let i of Array.isArray(o)?o:[])if(A(i,"/name")===t)return vi(A(i,"/rate"))}return"see the formula"}function oh(e,t,n,o){let i=Ve(`${o}/bulk_density`);return{formula:"powder = rate \xD7 what the rate is of: this layer's batter, or the fats in it (layer \xD7 fats \xF7 batter); a rate by the spoon \xD7 bulk density; rounded to the fine scale",with:[["rate",Ve(`${o}/rate`),xe],["this layer's batter",Le(t.g)],["fats in all the base",Le(e.fats_g)],["all the base",Le(e.make_g)],...A(u.run.now,`${o}/bulk_density`)===void 0?[]:[["bulk density",i,xe]],...sc(n)]}}var lc=e=>[e.pour,...af(e)];function Ca(e,t,n){return lc(e).map((o,i)=>[`${t} for ${e.lye_pot?.shares[i]?.batter??o.formula}`,n(o),"its own weighing, on the lye shelf"])}var uc=(e,t)=>e.ingredients.filter(n=>t?n.name===t:wr(n)).map(Sa).join(" + ")||"none",ih=e=>e.ingredients.filter(t=>/^Water/.test(t.name)).map(Sa).join(" + ")||"none";function rh(e,t){return{formula:"alkali in the pot = what each batter's own lye takes, added up, rounded down to the scale",with:[...Ca(e,t,n=>uc(n,t)),["fine scale reads",Ve("/scales/fine/reads"),xe]]}}function sh(e,t){return{formula:"water in the pot = all the alkali \xD7 the least plain water for a gram of alkali that one of the batters takes, before its own scale rounded it; rounded to the scale",with:[...Ca(e,"water in the lye",ih),...t.alkalis.map(n=>[n.name,ho(n,""),"in the pot"]),...Ca(e,"alkali",n=>uc(n))]}}function ah(e){return{formula:"lye in the pot = alkali + water, to the step the shares are weighed in; strength = pure alkali \xF7 (pure alkali + water)",with:[["water",ho(e,"water_")],...e.alkalis.map(t=>[t.name,ho(t,"")]),["strength",`${N(e.strength_percent,2)} %`],...e.full_pot_g===null?[]:[["the empty pot",Ve("/lye_pot/pot_tare"),xe],["pot and lye",e.full_pot_g_text===void 0?Kf(e.full_pot_g):`${e.full_pot_g_text} g`]]]}}function lh(e,t,n){let o=t.shares[n],i=lc(e)[n];return{formula:"share = lye in the pot \xD7 this batter's alkali \xF7 all the alkali, rounded down to the scale, as alkali is; what is left stays in the pot; superfat then = 1 \u2212 (1 \u2212 its own) \xD7 (alkali taken \u2212 acids) \xF7 (alkali planned \u2212 acids)",with:[["lye in the pot",ho(t,"lye_")],...Ca(e,"alkali",r=>uc(r)),["share",ho(o,"lye_")],...t.left_g?[["left in the pot",`${t.left_g_text??N(t.left_g,3)} g`]]:[],["superfat with its own lye",yi(i.superfat_percent.effective)],["superfat out of the pot",yi(o.superfat_percent)]],sources:["acids as KOH: each acid's equivalent, in the formula's additives"]}}function uh(e,t,n){let o=lc(e)[n];return{formula:"plain water to add = the water of this batter's own lye \u2212 the water that is in its share, both before rounding; under half a gram is left out",with:[["water of its own lye",ih(o),"its own weighing"],["its share of the lye",ho(t.shares[n],"lye_")],["water in the pot",ho(t,"water_")],["lye in the pot",ho(t,"lye_")],["to add",ho(t.shares[n],"top_up_")]]}}function ch(e,t,n){let o=e.bottles[t],{part:i,g:r,percent_of_batter:s}=o.parts[n],{pour:c,pipe:p}=e.whole;return{formula:"out of the bottle = what it holds \xD7 this batter \xF7 all batters of the run, rounded down to the scale: one rate in all",with:[["the bottle holds",Ve(`/bottles/${t}/holds`),xe],["base, in the run",Le(c.make_g)],...p?[["topping, in the run",Le(p.make_g)]]:[],[i,Kf(r)],["of the batter",`${s} %`]]}}var Vf={trials:"by trials = mean of the weighed trials \xF7 density of their whip (its weigh-cup, net \xF7 what it holds)",beads:"by beads = what the moves lay down, added up \xD7 the hand's factor of the tip, if it has one",envelope:"by outline = solid share \xD7 volume of a cone (\u03C0 \xF7 12 \xD7 across\xB2 \xD7 high) or of half an ellipsoid (\u03C0 \xF7 6 \xD7 across\xB2 \xD7 high)"};function ph(e,t){if(t==="beads")return{formula:Vf.beads,with:[...(e.visible_by?.moves??[]).map((o,i)=>[`${i+1}. ${Ve(`/pipe/beads/moves/${i}/move`)}`,ot(o.volume_ml)]),["hand's factor",A(u.run.now,"/pipe/beads/tip/hand/factor")===void 0?"as the tip's file says, else none":Ve("/pipe/beads/tip/hand/factor")]]};let n=t==="trials"?["weighed","weigh_cup/net","weigh_cup/holds"]:["form","diameter","height","solidity"];return{formula:Vf[t],with:n.map(o=>[o.replace("weigh_cup/","weigh-cup, "),Ve(`/pipe/${t}/${o}`),xe])}}var Dy={dollop:"half an ellipsoid = \u03C0 \xF7 6 \xD7 across\xB2 \xD7 high",ring:"ring = section of the bead \xD7 2 \u03C0 \xD7 radius (Pappus)",spiral:"spiral = section of the bead \xD7 length of its path (arc-length integral)",tail:"tail = section of the bead \xD7 length \xF7 3, a cone",dots:"dots = how many \xD7 section of the bead \xD7 high \xD7 2 \xF7 3",shells:"shells = how many \xD7 section of the bead \xD7 length \xF7 2",bead:"bead = section \xD7 length"};function mh(e,t,n){let o=`/pipe/beads/moves/${e}`,i=Object.entries(A(u.run.now,o)??{}).filter(([r])=>r!=="move");return{formula:`${Dy[Ve(`${o}/move`)]??"section of the bead \xD7 length"}; section = opening of the tip \xD7 swell`,with:[["opening of the tip",n],["swell",Ve("/pipe/beads/swell"),xe],...i.map(([r,s])=>[r.replaceAll("_"," "),vi(s),xe]),...t.length_mm>0?[["path, pressing",`${N(t.length_mm,1)} mm`]]:[],["laid down",ot(t.volume_ml)]]}}function dh(e){let t=Ve("/pipe/fills_headspace");return{formula:"topping = visible shape + share of the headspace \xD7 headspace; its mass = that \xD7 density of the whip",with:[["visible shape",ot(e.visible_each_ml),My()],["share of the headspace",t,xe],["in the headspace",ot(e.in_headspace_each_ml)],["together",ot(e.volume_each_ml)],["density of the whip",`${e.density_g_per_ml} g/ml`,"weigh-cup"]]}}function My(){return A(u.run.now,"/pipe/trials")?"mean of the trials \xF7 their weigh-cup's density":A(u.run.now,"/pipe/beads")?"the beads of the tip, move by move":"the outline \xD7 its solid share"}function fh(e){return{formula:"this bowl pipes = batter left after losses \xF7 today's density \xF7 topping of one piece, rounded down",with:[["today's weigh-cup",Ve("/pipe/whip_now"),xe],["planned weigh-cup",Ve("/pipe/whip"),xe],["topping of one piece",ot(e.volume_each_ml)],["batter",Le(e.make_g)],["to pipe",String(e.pieces)]]}}function cc(e,t){let n=o=>Ve(`/perch/${t}/${o}`);return{formula:"melt = (casts \xD7 mass of one + film left in the jug \xD7 tray fills) \xF7 (1 \u2212 melt loss)",with:[A(u.run.now,`/perch/${t}/per_piece`)===void 0?["in each cast",n("per_cast"),xe]:["on each piece",n("per_piece"),xe],["spares",n("spares"),xe],["casts",String(e.casts)],["mass of one",Le(e.mass_each_g,3),`${ot(e.volume_each_ml)} \xD7 ${n("density")}`],["tray fills",String(e.tray_fills),`${e.cavity_fills} hollows filled`],["film in the jug",n("jug_film"),xe],["melt loss",n("melt_loss"),xe]]}}function pc(e){return{formula:"bars = rows \xD7 columns that fit after trimming, planing and the kerf of each cut",with:[["rows",String(e.rows)],["columns",String(e.columns)],["bar",Ve("/cut/bar"),xe],["kerf",Ve("/cut/kerf"),xe],["smallest bar",ot(e.bar_ml.least)],["largest bar",ot(e.bar_ml.greatest)]]}}function hh(e){let t=e.piece.cost;return{formula:"cost of a piece = sum of (price \xF7 pack \xD7 used) \xF7 pieces to sell",with:[...t.materials.map(n=>[n.name,n.amount===null?"unpriced":`${n.amount} ${t.currency}`,`${N(n.g,1)} g used`]),["all materials",`${t.total} ${t.currency}`],["to sell",String(e.pieces.sell),xe]]}}function gh(e){return{formula:"cured = sum over the parts of dry matter + water \xD7 (1 \u2212 share lost in cure)",with:[...(e.piece.parts??[]).map(n=>[n.name,`${Le(n.fresh_g)} fresh`,n.cured_g===null?"":`${Le(n.cured_g)} cured`]),["base, water lost in cure",kr("pour","/water_lost_in_cure"),e.pour.formula],...e.pipe?[["topping, water lost in cure",kr("pipe","/water_lost_in_cure"),e.pipe.formula]]:[],["fresh",Le(e.piece.fresh_g)],["cured",e.piece.cured_g===null?"not known":Le(e.piece.cured_g)]]}}function _h(e,t){return{formula:"for the whole run = what is weighed for one batch \xD7 how often it is made, added up",with:e.batches.flatMap(n=>t(n).map(([o,i,r])=>[`${qt(e,n)}, ${mo(n.count)}${o}`,i,r]))}}var Sr="/pipe/beads",St=`${Sr}/tip`,No={at:`${Sr}/moves`,in_order:!0},mc="\0own",bh={tip:"",swell:"",moves:[]},Ln=(e,t)=>({name:e,label:t,kind:"length"}),wh={name:"count",label:"How many",kind:"count"},$h=Ln("circle_radius","Radius of their circle"),fc={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Ln("diameter","Across"),Ln("height","High")]},ring:{words:"Ring",does:"One closed turn.",measures:[Ln("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Ln("start_radius","Radius at the start"),Ln("end_radius","Radius at the end"),Ln("rise","Climbs by")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Ln("length","Long")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[wh,$h,Ln("height","High")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[wh,$h,Ln("length","Long")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Ln("length","Long"),{name:"aside",label:"Beside the middle by",kind:"signed",optional:!0}]}};function yh(e){return l`${Ey()} ${za()?Oy():f}
    ${v({label:"Swell of the bead",at:`${Sr}/swell`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${re(No).map((t,n)=>Iy(t,n,e))}</div>
    ${Hy()}`}var za=()=>typeof M("run",St)=="object";function vh(){let e=M("run",`${Sr}/tips_from`);return e===void 0?jd():Ud(String(e))}function Ey(){let e=n=>n===mc?ut("run","a tip of your own",St,{name:"",round:{radius:""}},xh):wt("run",St,n),t=vh().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return l`${On({label:"Tip",at:St,answers:[...t,[mc,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:za()?mc:void 0})}
  ${za()?f:fe({name:"tips",pointers:[`${Sr}/tips_from`],summary:"Tips of a file of your own",body:()=>v({label:"File of tips",at:`${Sr}/tips_from`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered."})})}`}var kh=Wo("run",St,"own"),xh=$i(kh),dc=[["round","Round"],["star","Star"],["outline","Another outline"]],Na={x:"",y:""},Fy={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Na,Na,Na]};function Oy(){let e=dc.map(([n])=>n).find(n=>M("run",`${St}/${n}`)!==void 0),t=n=>({...Xe("run",St,dc.map(([o])=>o)),[n]:Fy[n]});return l`<div class="part" id=${kh} role="group" aria-label="My own tip">
    ${Fe("run",St)} ${v({label:"What you call the tip",at:`${St}/name`})}
    ${Y({question:"Opening of the tip",at:St,is_told_elsewhere:!0,chosen:e,answers:dc,puts:t})}
    ${e?Cy(e):f}
    ${fe({name:"hand",pointers:[xr,`${St}/note`],summary:"What your hand adds",body:Ly})}
  </div>`}var xr=`${St}/hand`;function Ly(){let e=t=>M("run",t)!==void 0;return l`<div class="row">
      ${v({label:"Hand's factor",at:`${xr}/factor`,number:!0,short:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${e(`${xr}/factor`)?v({label:"From so many trials",at:`${xr}/trials`,count:!0,optional:!0,short:!0}):f}
    </div>
    ${e(xr)?l`<button
            type="button"
            @click=${()=>ut("run","hand's factor taken away",xr,void 0,xh)}
          >
            Leave out the hand's factor
          </button>`:f}
    ${v({label:"Note on the tip",at:`${St}/note`,optional:!0})}`}function Cy(e){if(e==="outline")return Wy();let t=(n,o)=>v({label:o,at:`${St}/${e}/${n}`,unit:"mm",short:!0});return l`<div class="row">
    ${e==="round"?t("radius","Radius of the opening"):l`${v({label:"Points",at:`${St}/star/points`,count:!0,short:!0})}
          ${t("outer_radius","Radius to the points")} ${t("inner_radius","Radius to the notches")}`}
  </div>`}function Wy(){let e={at:`${St}/outline`};return l`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${re(e).map((t,n)=>l`<div class="row" id=${Oe(e,n)}>
          ${v({label:`Corner ${n+1}, x`,at:`${e.at}/${n}/x`,unit:"mm",short:!0})}
          ${v({label:`Corner ${n+1}, y`,at:`${e.at}/${n}/y`,unit:"mm",short:!0})}
          ${Ye(e,n,`corner ${n+1}`)}
        </div>`)}
    ${qe(e,"One more corner",()=>Je(e,Na,"corner"))}`}function Iy(e,t,n){let o=fc[String(e.move)],i=`${No.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return l`<div class="part" id=${Oe(No,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${Ye(No,t,r)}
    </div>
    ${Fe("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(s=>By(i,s))}
      ${v({label:"Starts this high",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Ny(t,n)}
  </div>`}function By(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,s=o==="length"||o==="signed"?"mm":void 0;return v({label:n,at:`${e}/${t}`,unit:s,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function Ny(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==re(No).length)return f;let i=o.length_mm>0?`${N(o.length_mm/10,1)} cm of bead`:"";return oe({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:xt(u.units,o.volume_ml),sum:mh(e,o,zy())})}function zy(){if(za())return"as measured, above";let e=Ee("run",St),t=vh().find(n=>n.name===e);return t?.area_mm2?`${e}: ${t.opening}, ${N(t.area_mm2,1)} mm\xB2`:e}function Hy(){let e=o=>({move:o,...Object.fromEntries(fc[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=lt("run",No.at),n=Et("run",No.at);return l`${en(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:f}
    >
      ${Object.entries(fc).map(([o,{words:i,does:r}])=>l`<button type="button" @click=${()=>Je(No,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var jy={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]};function bs(e,t){return jy[e].map(({name:n,label:o,unit:i,optional:r})=>v({label:t?`${t}: ${o.toLowerCase()}`:o,at:`/losses/${e}/${n}`,unit:i,short:!0,optional:r}))}var Uy=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]);function ys(e){let t=`/${e}/warmth`,n=(o,i)=>v({label:i,at:`${t}/${o}`,unit:u.units==="us"?"\xB0F":"\xB0C",optional:!0,short:!0});return fe({name:t,pointers:[t],summary:"How warm",body:()=>l` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${Fe("run",t)}
        <div class="row">
          ${n("lye_made_at","Room and dry alkali")} ${n("water_at","Water")}
          ${v({label:"Of the water, as ice",at:`${t}/ice_share`,unit:"%",optional:!0,short:!0})}
          ${n("lye_used_at","Lye when it is used")} ${n("fats_at","Fats")}
          ${n("batter_limit","Batter must stay below")}
          ${On({label:"The lye cools in",at:`${t}/cooled_in`,answers:Uy,unsaid:"not said",optional:!0})}
        </div>`})}var Sh={holds:"",net:""},yn=()=>A(u.run.now,"/pipe")!==void 0;function Th(){let e=A(u.run.now,"/pour/formula")??"";vr("run","Topping added",n=>Ge(Ge(n,"/pipe",{formula:e,fills_headspace:"",whip:Sh}),"/losses/pipe",{bag:"",bowl_and_whisk:""}),bn("lane-pipe"))}function Jy(e){let t=Object.keys(A(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",A(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>A(o,i)===void 0?o:Ge(o,i,void 0),e)}function qy(){vr("run","Topping taken away",Jy,bn("topping-back"))}function Ph(){let e=u.past.at(-1)?.run?.now;return!e||A(e,"/pipe")===void 0||yn()?f:l`<button type="button" id="topping-back" @click=${sr}>Bring the topping back</button>`}function hc(){return l`${Qy()} ${ys("pipe")}
    <p class="choice"><button type="button" @click=${qy}>Take the topping away</button></p>`}function gc(e){return l`<h3>How large is the topping?</h3>
    ${Fe("run","/pipe")}
    <p class="hint">Weighed trials count before beads, beads before an outline; what you give besides is compared.</p>
    <div class="items">
      ${tn({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Sh},body:Vy})}
      ${tn({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",solidity:""},body:Ky})}
    </div>
    ${tn({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Reckon it from tip and moves",blank:bh,body:()=>yh(e)})}
    ${e?Yy(e):f}`}function Vy(){let e={at:"/pipe/trials/weighed",least:1};return l`<div class="trials">
      ${re(e).map((t,n)=>l`<div class="row" id=${Oe(e,n)}>
            ${v({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${Ye(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${qe(e,"One more trial",()=>Je(e,"","trial"))}
    <div class="row">
      ${v({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${v({label:"Cup holds",at:"/pipe/trials/weigh_cup/holds",unit:"ml",short:!0})}
    </div>
    ${Fe("run","/pipe/trials/weigh_cup")}`}function Ky(){let e="/pipe/envelope",t=M("run",`${e}/form`);return l`${Y({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${v({label:"Across",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${v({label:"High",at:`${e}/height`,unit:"mm",short:!0})}
      ${v({label:"Solid share",at:`${e}/solidity`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Gy={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Yy(e){let t=e.visible_by;if(!t)return f;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return l`<h4>${n.length<2?"So the visible shape is":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},s)=>oe({key:`pipe.by.${i}`,label:Gy[i],note:o(s),shown:xt(u.units,r),sum:ph(e,i)}))}
    ${Zy(e)}`}function Zy(e){let t=e.visible_by?.hand_suggested;if(!t||u.is_old)return f;let n=N(t.factor,2),o="/pipe/beads/tip/hand",i=typeof M("run","/pipe/beads/tip")=="object",r=i&&A(u.run.now,`${o}/factor`)!==t.factor,s=()=>ut("run","hand's factor kept",o,{factor:t.factor,trials:t.trials});return l`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?l`<button type="button" @click=${s}>Keep ${n} for my tip</button>`:f}`}function _c(e){return l`<h3>The whip planned for</h3>
    <div class="row">
      ${v({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})}
      ${v({label:"Cup holds",at:"/pipe/whip/holds",unit:"ml",short:!0})}
    </div>
    ${Fe("run","/pipe/whip")}
    ${v({label:"One bag holds",at:"/pipe/bag_holds",unit:"ml",optional:!0,hint:e?.loads?`${e.loads} bag loads`:void 0})}`}function Rh(){return l`<h3>What is lost of it</h3>
    <div class="row">${bs("pipe")}</div>`}function Qy(){let e=(n,o,i,r=!1)=>v({label:n,at:o,unit:i,optional:r,short:!0});return fe({name:"vessels",pointers:["/pipe/bowl","/pipe/pace","/pipe/lye_spoon"],summary:"Bowl, pace, lye by the spoon",body:()=>l` <div class="items">
        ${tn({at:"/pipe/bowl",name:"the bowl",title:"The bowl",add:"Say what the bowl holds",blank:{holds:""},body:()=>l`<div class="row">
              ${e("Bowl holds","/pipe/bowl/holds","l")}
              ${e("Least the whisk catches, unwhipped","/pipe/bowl/whisk_catches","ml",!0)}
            </div>`})}
        ${tn({at:"/pipe/pace",name:"the pace",title:"The pace",add:"Say how fast you pipe",blank:{stays_open:"",each:""},body:()=>l`<div class="row">
              ${e("Can be piped for","/pipe/pace/stays_open","min")}
              ${e("To pipe one","/pipe/pace/each","s")}
              ${e("To change the bag","/pipe/pace/bag_change","s",!0)}
            </div>`})}
        ${tn({at:"/pipe/lye_spoon",name:"the lye spoon",title:"Lye by the spoon",add:"Lye is whipped in by the spoon",blank:{holds:"",each:""},body:()=>l`<div class="row">
              ${e("Spoon holds","/pipe/lye_spoon/holds","ml")}
              ${e("From one spoonful to the next","/pipe/lye_spoon/each","s")}
            </div>`})}
      </div>`})}var Cn=e=>e===null?"not known":`${N(e,2)} mm`,nn=(e,t)=>{let n=Ve(t);return n==="not said"?[]:[[e,n,xe]]};function Ah(e,t){let n=t.heat;return{formula:"hottest lye: where its enthalpy is that of the cold water and the dry alkali together, all at once in a pot that takes none of it; cooling time = mass \xD7 heat capacity \xF7 (U \xD7 area) \xD7 ln((from \u2212 around) \xF7 (to \u2212 around))",with:[["strength",`${N(t.lye_strength_percent,1)} %`],["water at",`${n.water_at_c} \xB0C`],...nn("lye made at",`/${e}/warmth/lye_made_at`),...nn("lye used at",`/${e}/warmth/lye_used_at`),...nn("fats at",`/${e}/warmth/fats_at`),...nn("cooled in",`/${e}/warmth/cooled_in`)],sources:["NaOH: enthalpy and vapour pressure by Olsson, Jernqvist and Aly, Int. J. Thermophysics 18 (1997)","KOH: heat of solution at infinite dilution (CRC Handbook), which is too warm, never too cool","U: 50 to 300 W/(m\xB2 K) in water, 5 to 20 in air, by published coefficients of free convection; Newton's law of cooling"]}}function Dh(e){return{formula:"pieces = batter left after losses \xF7 (net weight \xF7 cup) \xF7 topping of one piece, rounded down; overrun = plain density \xF7 whipped density \u2212 1",with:[["batter",Le(e.make_g)],["losses together",Le(e.lost_g)],["cup holds",Ve("/pipe/whip/holds"),xe],["topping of one piece",ot(e.volume_each_ml)],["plain density",`${e.plain_density_computed_g_per_ml} g/ml`,"computed, before whipping"],["to pipe",String(e.pieces)]]}}function Mh(e){return{formula:"piping = pieces \xD7 one piece + bag changes; least = what the whisk catches \xF7 plain batter of one piece; most = share of the bowl \xF7 whipped batter of one piece, and open time \xF7 one piece; spoonfuls = lye \xF7 spoon",with:[["pieces",String(e.pieces)],...nn("one piece takes","/pipe/pace/each"),...nn("a bag change","/pipe/pace/bag_change"),...e.loads?[["bag loads",String(e.loads),`bag of ${Ve("/pipe/bag_holds")}`]]:[],...nn("stays open","/pipe/pace/stays_open"),...nn("bowl holds","/pipe/bowl/holds"),...nn("whisk catches","/pipe/bowl/whisk_catches"),...nn("spoon holds","/pipe/lye_spoon/holds"),...nn("from one spoonful to the next","/pipe/lye_spoon/each")],sources:["how full a bowl may be whipped: common practice, no source"]}}function Eh({on_top:e,buried:t},n){let o=`/perch/${n}`;return{formula:e?"it stands proud by its height less what is pressed in; it rests on a circle as large as its section at that depth":"cover = least distance between the surfaces of the embed and of wall, floor, pour line or next embed; pushed aside = its volume below the line",with:e?[...nn("pressed in",`${o}/on_top/sinks`),["of it below the top",ot(e.sunk_ml)],["rests on a circle of",Cn(e.contact_mm)],["flat of the peak",Cn(e.peak_flat_mm),"by the topping's shape"]]:[...nn("cover wanted",`${o}/buried/cover`),...(t?.embeds??[]).map(({middle_mm:i,floor_cover_mm:r,wall_cover_mm:s,apart_mm:c},p)=>[`${p+1}. middle at ${i.map(h=>N(h,1)).join(", ")} mm`,`floor ${Cn(r)}, wall ${Cn(s)}`,c===null?"":`next one ${Cn(c)}`])],sources:["measured between the facets of mould and embed as they are drawn"]}}function Fh(){let{gauge:e}=u.measured,t=e.pockets[0];return{formula:"to the brim = area of the level section, summed from floor to brim; of a mesh by the signed tetrahedra of its facets (divergence theorem); with water = net weight \xF7 density of water",with:[["one cavity",ot(t.brimful_ml)],["floor",Cn(t.floor_mm)],["brim",Cn(t.brim_mm)],["opening",`${N(t.opening_cm2,2)} cm\xB2`],["cavities",String(e.pockets.length)],["all of them",ot(e.total_ml)]],sources:Wa()}}function Oh(e){let t=e.piece.size;return{formula:"the box that the model of base, topping and decoration just fits, standing as it was poured",with:[["wide",Cn(t.width_mm)],["deep",Cn(t.depth_mm)],["high",Cn(t.height_mm)],["of it base to the pour line",Cn(e.pour.depth_mm)]]}}var vn={at:"/perch"},Ha=e=>`${vn.at}/${e}`,ki=e=>Ee("run",`${Ha(e)}/name`).trim()||`Decoration ${e+1}`,Bt=()=>A(u.run.now,"/cut")!==void 0,ja=e=>["mould","rod","drizzle"].find(t=>M("run",`${e}/${t}`)!==void 0),vs=e=>["per_piece","per_cast"].find(t=>M("run",`${e}/${t}`)!==void 0);var on="/batch",Tr="/pots",ks=e=>`${e}/moulds_owned`;function wc(){let e=[on,Tr,ks("/pour")];return fe({name:"batches",pointers:e,summary:`Batches, pots, moulds owned${Xy()}`,body:()=>l` <p class="hint">What you leave blank sets no limit.</p>
        ${Fe("run",on)} ${Fe("run",Tr)}
        <div class="row">
          ${v({label:"Moulds like this owned",at:ks("/pour"),count:!0,optional:!0,short:!0,hint:"Else as many as the mould's own file says."})}
          ${v({label:"Pot for the base holds",at:`${Tr}/holds`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to two thirds."})}
          ${v({label:"Lye jug holds",at:`${Tr}/lye_jug`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to half."})}
          ${ev()} ${nv()}
        </div>
        ${Y({question:"Cavities at each filling",at:on,asked_at:`${on}/fill`,chosen:M("run",`${on}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Lh("fill",t==="full"?t:void 0)})}`})}function Xy(){let[e,t,n,o,i]=[`${on}/pieces`,`${on}/casts`,`${Tr}/holds`,`${Tr}/lye_jug`,ks("/pour")].map(s=>Ee("run",s)),r=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`,n&&`pot of ${n}`,o&&`lye jug of ${o}`,i&&kt(Number(i),"mould")].filter(Boolean);return r.length?`: ${r.join(", ")}`:""}function Lh(e,t){let n=Xe("run",on,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function ev(){let e=M("run",`${on}/casts`)!==void 0,t=(n,o)=>v({label:o,at:`${on}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return Bt()?M("run",`${on}/pieces`)!==void 0?l`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${tv}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function tv(){ut("run","Counted in loaves",on,Lh("pieces",void 0))}function nv(){let e=`${on}/whippings`;return!yn()&&M("run",e)===void 0?f:v({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var ov=500,$c=()=>A(u.run.now,"/cut")===void 0&&(u.plan?.pour.brimful_ml??0)>=ov;function iv(){ut("run","Cut it into bars","/cut",{bar:{},kerf:""},$i(lt("run","/cut/bar")))}function rv(){ut("run","Left whole","/cut",void 0,bn("cut-into-bars"))}function bc(){return $c()?l`<div class="choice">
    <button type="button" id="cut-into-bars" @click=${iv}>Cut it into bars</button>
  </div>`:f}var sv={loaf:{thickness:""},slab:{length:"",width:""}};function av(){let e=M("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var lv={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Ua(){let e=av(),t=(o,i)=>v({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=Ee("run","/cut/along");return l` ${Y({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>sv[o]})}
    <div class="row">
      ${e==="loaf"?v({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):f}
      ${e==="slab"?["length","width"].map(o=>v({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):f}
      ${v({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${e?Y({question:e==="loaf"?"Slice follows slice":"The bars' length lies",at:"/cut/along",chosen:n,answers:lv[e],puts:o=>o||void 0}):f}
    <button type="button" @click=${rv}>Leave it whole</button>`}var uv=/put "confirmed": ("(?:[^"\\]|\\.)*")/;function cv(e,t,n){let o=uv.exec(n)?.[1];if(o===void 0)return;let i=JSON.parse(o),r=t==="/"?e:A(e,t),c=r!==null&&typeof r=="object"&&!Array.isArray(r)&&!/ beside "/.test(n)?t.replace(/^\/$/,""):t.slice(0,t.lastIndexOf("/")),p=A(e,`${c}/confirmed`),h=Array.isArray(p)?p:typeof p=="string"?[p]:[];return{pointer:`${c}/confirmed`,value:h.length?[...h,i]:i}}function Ja(e,t,n,o){let i=cv(e,t,n);return i?l`<button type="button" @click=${()=>o(i.pointer,i.value)}>It is really so: keep it</button>`:f}function vc(){let e="/lye_pot",t=M("run",`${e}/shared`)===!0;return!t&&!yn()?f:l`${Zu(e,"Make one lye pot for both",t,{shared:!0})}
  ${t?v({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):f}`}function Ch(){return l`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${vc()} ${kc()} ${xc()}
  </section>`}function kc(e){let t={at:"/bottles"},n=re(t);return fe({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>l` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${e&&Xt(e)?` Weights are of ${Xt(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,s=String(o.name)||`bottle ${i+1}`;return l`<div class="part" id=${Oe(t,i)} role="group" aria-label=${s}>
            <div class="part-head">
              <p class="part-title">${s}</p>
              ${Ye(t,i,s)}
            </div>
            ${Fe("run",r)} ${Fe("run",`${r}/shared`)}
            <div class="row">
              ${v({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${v({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?pv(e,i,s):f}
          </div>`})}
        ${qe(t,"Use up a bottle",()=>Je(t,{name:"",holds:"",shared:"by rate"},"bottle"))}`})}function pv(e,t,n){let o=e.bottles?.[t];return o?.name!==n?f:o.parts.map((i,r)=>oe({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${N(i.percent_of_batter,2)} % of the batter`,shown:Ue(u.units,At(i,"")),size:"weigh",sum:ch(e,t,r)}))}function xc(){return tn({at:"/label",name:"the label",title:"For the label",add:"Draft the label",blank:{market:""},body:mv})}function mv(){let e=M("run","/label/market"),t=M("run","/label/weighed")===void 0?"said":"weighed";return l`${Y({question:"Where it is sold",at:"/label",asked_at:"/label/market",chosen:e,answers:[["EU","In the EU"],["US","In the US"]],puts:dv})}
  ${Y({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:fv})}
  ${t==="weighed"?hv():l`<div class="row">
          ${v({label:"Heavier or lighter by",at:"/label/spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${v({label:"Pour line higher or lower by",at:"/label/pour_line",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${v({label:"Your labels already say",at:"/label/states",unit:"g",optional:!0,hint:"It is held against the pieces."})}
  ${e==="EU"||M("run",yc)!==void 0?Zu(yc,"With the e mark",M("run",yc)===!0,!0):f}`}var yc="/label/e_mark";function dv(e){return{...Xe("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function fv(e){let t=Xe("run","/label",["weighed","spread","pour_line"]);return e==="weighed"?{...t,weighed:["","",""]}:t}function hv(){let e={at:"/label/weighed",least:3};return l`<div class="trials">
      ${re(e).map((t,n)=>l`<div class="row" id=${Oe(e,n)}>
            ${v({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${Ye(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${qe(e,"One more piece",()=>Je(e,"","piece"))}`}function zo(e){let{whole:t,batch:n}=e,o=rf(t,n);return l`<h3 class="batch-head of-plan ${hr(t)?"of-sizes":""}">
      One batch: ${qt(t,n)}${o?l`<span>, ${o}</span>`:f}
    </h3>
    ${hr(t)?l`<div class="sizes">
            ${Ft("Which batch is weighed",String(Uu(t)),t.batches.map((i,r)=>[String(r),qt(t,i)+(i.count>1?`, ${mo(i.count)}`:"")]),gv)}
          </div>`:f}`}function gv(e){let t=u.plan;S({batch:Number(e)}),Yn(`One batch: ${qt(t,t.batches[u.batch])}`)}function Wh(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(p=>`${hr(e)?`${p.count} of `:""}${qt(e,p)}`),s=`Made in ${t} batches${hr(e)?": ":" of "}${Ju(r)}; ${ba(n,o)}.`,c=e.batch_limits.filter(p=>p.sets);return l`<div class="batches-told of-plan">
    ${$t(e)?l`<p><b>${s}</b></p>`:f}
    ${i>0?l`<p>
            ${kt(i,e.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:f}
    ${c.length?l`<p><span class="called">What sets a batch:</span> ${c.map(p=>p.text).join(" ")}</p>`:f}
    ${e.around.length?l`<p><span class="called">One fewer, one more:</span> ${e.around.map(p=>p.text).join(" ")}</p>`:f}
  </div>`}var Pr=e=>ee(u.printing,e);function Ih(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function Bh(e){if(!u.printing.is_working){Pr({is_working:!0,told:"Making it ..."});try{await _v(),Pr({told:await e()})}catch(t){Pr({told:t instanceof Error?t.message:String(t)})}Pr({is_working:!1})}}async function _v(){await ur();let e=co("run");if(e)throw new Error(`${e.file} changed underneath: say first which text is to stay.`)}var Ho=(e,t)=>()=>Bh(async()=>{let n=URL.createObjectURL(await er(t));return Ih(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),wv=e=>()=>Bh(async()=>(Ih(await Um(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),$v=e=>{Pr({paper:e}),localStorage.setItem("paper",e)},bv=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function Nh(e){let{batch:t}=u.printing;return $t(e)&&t<=e.pieces.batches?t:0}function yv(e){if(!$t(e))return f;let t=Nh(e),n=i=>Pr({batch:Number(i.target.value)}),o=(i,r)=>l`<option value=${i} .selected=${Mt(i===t)}>${r}</option>`;return l`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${bv(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${qt(e,r)}`))}
      </select>
    </div>
  </div>`}function zh(e){let{paper:t,is_working:n,told:o}=u.printing,i=u.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),r={file:u.run.file,run:u.run.now},s=u.measured?.mould,c={file:s,"below-brim":`${e.pour.below_brim_mm} mm`},p=Nh(e),h={plan:r,paper:t,...p?{batch:String(p)}:{}},w=($,y,T="")=>l`<button type="button" class=${T} ?disabled=${n} @click=${()=>{y()}}>${$}</button>`;return l`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">To print and to keep</h2>
    <h3>The sheet for the bench</h3>
    ${Ft("Paper",t,[["A4","A4"],["Letter","Letter"]],$v)}
    ${yv(e)}
    <div class="choice">
      ${w("Bench sheet, to print",wv({kind:"sheet",...h}),"strong")}
      ${w("Bench sheet, PDF",Ho(`${i}${p?` batch ${p}`:""}.pdf`,{kind:"sheet-pdf",...h}))}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?w("Label draft",Ho(`${i} label.txt`,{kind:"label",plan:r})):""}
      ${w("Drawing of the pour, true size",Ho(`${i} pour.svg`,{kind:"picture",plan:r}))}
      ${w("Drawing of the piece",Ho(`${i}.svg`,{kind:"piece",plan:r}))}
      ${w("Whole piece, GLB",Ho(`${i}.glb`,{kind:"glb",plan:r}))}
      ${w("Whole piece, STL",Ho(`${i}.stl`,{kind:"stl",plan:r}))}
      ${s?l`${w("Filled cavity, GLB",Ho(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${w("Cavity, STL",Ho(`${i} cavity.stl`,{kind:"stl",gauge:{file:s}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${ae(Dt(u.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var jh=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Uh(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.perch?.find(p=>!p.buried&&p.cavity_fills>0),r=i?Vh(i):0,s=i?i.on_top?.stands_proud_mm??1.9*r:0,c=e.pipe?vv(e,t,n,s):0;return{brim:n,line:o,topping:c,ball:r,proud:s,top:Math.max(n,(e.pipe?n:o)+c+s)}}function vv(e,t,n,o){let i=gr(A(u.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[s,c]=ku(t,t.brim-.01),p=Math.PI/4*(c-s)**2;return 1500*e.pipe.visible_each_ml/p}function Hh(e,t){let[n,o]=ku(e,e.brim-.01),i=(n+o)/2,r=3,s=w=>(o-n)/2*Math.sqrt(1-(w/(r+.3))**2),c=w=>-(t.brim+t.topping*w/r),p=(w,$,y)=>{let T=i+y*(Math.max(s(w),s($))+(o-n)*.035);return`C${T} ${c(w)} ${T} ${c($)} ${i+y*s($)*($?.94:1)} ${c($)}`},h=`M${n} ${c(0)}`;for(let w=0;w<r;++w)h+=p(w,w+1,-1);h+=`L${i+s(r)*.94} ${c(r)}`;for(let w=r;w>0;--w)h+=p(w,w-1,1);return`${h}Z`}var xs=(e,t)=>e===t?`shaded ${t}`:"plain";function xi(e,t,n=f){let o=u.measured?.outline;if(!o)return l`<p class="drawing hint">${u.measuring_failed??"Reading the mould ..."}</p>`;let i=Uh(t,o),r=o.right-o.left,s=Math.max(6,r*.1),c={x:o.left-s,y:-i.top-s,w:r+2*s,h:i.top+2*s};return l`<div class="drawing">
      <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${Mv(e,t)}>
        ${kv(e)} ${xv(e,t,o,i)} ${Tv(e,t,o,i)} ${Pv()}
        ${Rv(e,t,o,i)} ${Dv(e,t,o,i)}
        ${tt`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
      </svg>
      ${n}
    </div>
    ${e==="perch"&&Sc(t)?l`<p class="hint">${Sc(t)}</p>`:f}`}function Jh(e,t){let n=u.measured.outline,o=Uh(e,n),i=n.right-n.left,r=Math.max(6,i*.1),s=o.top+2*r;return{share:(o.top+r-t)/s,per_mm:1/s,w:i+2*r,h:s}}function kv(e){return tt`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${jh(qh())} /></clipPath>
  </defs>`}function qh(){let e=u.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function xv(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],s=(r.length?r.map(c=>Sv(c,n)):[[o.line,o.line]]).map(([c,p])=>`M${n.left} 0V${-c}L${n.right} ${-p}V0Z`);return tt`<g clip-path="url(#cavity-${e})">${s.map((c,p)=>tt`<path class="whole" d=${c} /><path class="${xs(i,"pour")} band${p%3}" d=${c} />${i==="pour"&&p%2===0?tt`<path fill="url(#hatch-${e})" d=${c} />`:f}`).reverse()}</g>`}function Sv(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function Tv(e,t,n,o){if(!t.pipe||o.line>=o.brim)return f;let i=Math.min(1,(parseFloat(String(A(u.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,s=(n.left+n.right)/2;return tt`<g clip-path="url(#cavity-${e})"><rect class=${xs(e,"pipe")} x=${s-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Pv(){return tt`<path class="wall" fill-rule="evenodd" d=${jh(qh())} />`}function Rv(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,s=t.perch?.flatMap((c,p)=>(c.buried?.embeds??[]).map(h=>({embed:h,one:c,i:p})))??[];return tt`
    ${t.pipe?tt`<path class=${xs(e,"pipe")} d=${Hh(n,o)} />${e==="pipe"?tt`<path fill="url(#dots-pipe)" d=${Hh(n,o)} />`:f}`:f}
    ${o.ball?tt`<circle class=${xs(e,"perch")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:f}
    ${s.map(({embed:c,one:p,i:h})=>Av(xs(e,"perch"),i,c,p,h))}`}function Av(e,t,n,o,i){let[r,s]=[t+n.middle_mm[0],n.middle_mm[2]],c=gr(A(u.run.now,`/perch/${i}/rod/diameter`)),p=gr(A(u.run.now,`/perch/${i}/rod/length`));if(!c||!p)return tt`<circle class=${e} cx=${r} cy=${-s} r=${Vh(o)} />`;let[h,w]=[n.turn[0][0],n.turn[2][0]],$=Math.min(1,Math.hypot(h,w)),y=c/2*Math.sqrt(1-$*$),T=p*$+2*y,P=-180/Math.PI*Math.atan2(w,h);return tt`<rect class=${e} x=${-T/2} y=${-c/2} width=${T} height=${c} rx=${y} ry=${y?c/2:0}
    transform="translate(${r} ${-s}) rotate(${P})" />`}var Vh=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Sc(e){let t=(e.perch??[]).filter((n,o)=>A(u.run.now,`/perch/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function Dv(e,t,n,o){if(e!=="cut"||!t.cut)return f;let i=Math.max(t.cut.rows,t.cut.columns);return tt`${Array.from({length:i-1},(r,s)=>{let c=n.left+(n.right-n.left)*(s+1)/i;return tt`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function Mv(e,t){let n=ae(Dt(u.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",perch:"the decoration",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Sc(t)}`.trim()}var Ev={piece:{per_piece:""},surface:{on_surface:"",covered:"",lands:""}},Wn={at:"/dust"},Tc=e=>Ee("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function Kh(){Je(Wn,{name:""},"Dust")}function Fv(e){return M("run",`${e}/per_piece`)!==void 0?"piece":M("run",`${e}/on_surface`)===void 0?void 0:"surface"}function Gh(e){let t=`/dust/${e}`,n=Fv(t),o=Tc(e),i=r=>({...Xe("run",t,["per_piece","on_surface","covered","lands"]),...Ev[r]});return l` ${v({label:"Which powder",at:`${t}/name`})}
  ${Y({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?v({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):f}
  ${n==="surface"?l`<div class="row">
            ${v({label:"Lies where it covers",at:`${t}/on_surface`,unit:"mg/cm2",short:!0})}
            ${v({label:"Covered, of the surface",at:`${t}/covered`,unit:"%",short:!0})}
            ${v({label:"Lands, of what is dusted",at:`${t}/lands`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all that the air sees of the piece in its mould: topping, decoration, level batter.
          </p>`:f}
  ${Bo("run",t,o)}`}var Ov={"by number":{},on_top:{on_top:{sinks:""}},buried:{buried:{cover:""}}};function Lv(e){return["on_top","buried"].find(t=>M("run",`${e}/${t}`)!==void 0)??"by number"}function Yh(e,t){let n=Lv(e),o=i=>({...Xe("run",e,["on_top","buried"]),...Ov[i]});return ja(e)==="drizzle"?l`<p class="aside">A drizzle lies on the surface it covers.</p>`:fe({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>l` ${Y({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Only counted"]],puts:o})}
      ${n==="on_top"?Cv(`${e}/on_top`):n==="buried"?Iv(e,t):l`<p class="aside">It is counted and weighed; how it sits is not looked at.</p>`}`})}function Cv(e){return l`<div class="row">
      ${v({label:"Pressed into the top",at:`${e}/sinks`,unit:"mm"})}
      ${v({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Zh(e,"It is turned")}`}function Zh(e,t){let n=o=>v({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return fe({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>l` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var Wv=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function Iv(e,t){let n=`${e}/buried`,o=M("run",`${n}/places`)!==void 0?"said":M("run",`${n}/find`),i=M("run",`${n}/set`);return l`${Fe("run",n)}
  ${v({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${Y({question:"When is it set in?",at:`${n}/set`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:r=>r})}
  ${Y({question:"Where in the pour?",at:e,asked_at:`${n}/find`,chosen:o,answers:Wv,puts:r=>Bv(e,r)})}
  ${o==="said"?zv(e,t):f}`}var Qh={x:"",y:"",height:""};function Bv(e,t){let n=Xe("run",`${e}/buried`,["find","places"]);if(t!=="said")return{...M("run",e),buried:{...n,find:t}};let o=Number(M("run",`${e}/${vs(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Qh);return{...Xe("run",e,["per_piece","per_cast"]),[Xh(e)]:i.length,buried:{...n,places:i}}}var Xh=e=>Bt()?"per_cast":vs(e)??"per_piece";function Nv(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,s)=>Ge(r,`${e}/${s}`,void 0),n);return Ge(i,`${e}/${Xh(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function zv(e,t){let n=Nv(e),o=re(n);return l`<p class="hint">
      From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the
      other side. The height is that of its lowest point above the cavity's.
    </p>
    ${o.map((i,r)=>{let s=`${n.at}/${r}`,c=p=>v({label:`Place ${r+1}: ${p}`,at:`${s}/${p}`,unit:"mm",short:!0});return l`<div class="part" id=${Oe(n,r)} role="group" aria-label="Place ${r+1} of ${ki(t)}">
        ${Fe("run",s)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${Ye(n,r,`place ${r+1} of ${ki(t)}`)}
        </div>
        ${Zh(s,`Place ${r+1} is turned`)}
      </div>`})}
    ${qe(n,"Add a place",()=>Je(n,Qh,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var eg=e=>`${e} made`;function Hv(){let e=Ha(re(vn).length),t=Bt()?{}:{per_piece:""};for(let n of[eg(e),`${e} where`])Sf("run",n);Je(vn,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",jug_film:""},"Decoration")}function qa(){let[e,t]=[re(vn).length>0,re(Wn).length>0];return l`<div class="choice">
    ${qe(vn,e?"Add another decoration":"Add a decoration",Hv)}
    ${qe(Wn,t?"Add another dust":"Add a dust",Kh)}
  </div>`}function tg(e){let t=Ha(e);return l` ${Fe("run",t)} ${qv(t)}
    <div class="row">
      ${jv(t)} ${v({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${v({label:"Melt lost",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${v({label:"Film in the jug",at:`${t}/jug_film`,unit:"g",short:!0})}
      ${v({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${Yh(t,e)} ${Bo("run",t,ki(e))}`}function jv(e){let t=vs(e),n=Oo("run",`${e}/buried/places`).length;if(n&&n===M("run",`${e}/${t}`)&&!(Bt()&&t==="per_piece"))return l``;let o=t==="per_cast"?Bt()?"In each loaf":"In each cast":Bt()?"On each bar":"On each piece",i=r=>({...Xe("run",e,["per_piece","per_cast"]),[r]:t?M("run",`${e}/${t}`):""});return l`${Bt()?Y({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):f}
  ${t?v({label:o,at:`${e}/${t}`,count:!0,short:!0}):f}`}var Uv={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function Jv(e,t){let n=["mould","moulds_owned","fill","made_of","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...Xe("run",e,n),...Uv[t]}}function qv(e){let t=ja(e),n=["name","material","mould","moulds_owned","fill","made_of","rod","drizzle","each_fill"].map(o=>`${e}/${o}`);return fe({name:eg(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>l` <div class="row">
          ${v({label:"What it is called",at:`${e}/name`})}
          ${v({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${Y({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>Jv(e,o)})}
        ${t?Vv[t](e):f}
        ${v({label:"To fill all trays once, setting included",at:`${e}/each_fill`,unit:"min",optional:!0})}`})}var Vv={mould:Kv,rod:e=>l`<div class="row">
      ${v({label:"Rod, across",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${v({label:"Rod, long",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>l`<div class="row">
      ${v({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${v({label:"Thick",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function Kv(e){let t=M("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return l`${fo("Cast in",`${e}/mould`,u.files?.moulds)}
  ${v({label:"Trays like this owned",at:ks(e),count:!0,optional:!0,hint:"Else as many as the mould's own file says."})}
  ${Y({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?v({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):v({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${Y({question:"What makes one?",at:`${e}/made_of`,chosen:M("run",`${e}/made_of`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Rr=()=>re(vn).length+re(Wn).length>0;function ng(){return l`<section class="lane unused" aria-label="Perch">
    <h2>Perch</h2>
    <p>Nothing is set on or in it${$c()?", and it is left whole":""}.</p>
    ${qa()} ${bc()}
  </section>`}function og(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function ig(e){let t=re(vn).flatMap((n,o)=>{let i=Gv(e,o);return i?[{one:i,i:o}]:[]});return l`<div class="side">${t.map(({one:n})=>Yv(e,n))} ${xi("perch",e)}</div>
    <div class="weights">
      ${t.map(({one:n,i:o})=>Zv(e,n,o))}
      ${e.dust?.length&&re(Wn).length?l`${$t(e.whole)?zo(e):f}
              <h3>Weigh for dusting</h3>`:f}
      ${re(Wn).map((n,o)=>Xv(e,o))}
    </div>
    ${Pc()}`}var Gv=(e,t)=>og(e.perch,re(vn),Ee("run",`/perch/${t}/name`),t);function Pc(){let e=(t,n,o,i)=>l`<section class="questions" id=${Oe(t,n)} aria-labelledby="${Oe(t,n)}-title">
      <div class="part-head">
        <h3 id="${Oe(t,n)}-title">${o}</h3>
        ${Ye(t,n,o)}
      </div>
      ${i}
    </section>`;return l`<div class="all-questions">
    ${re(vn).map((t,n)=>e(vn,n,ki(n),tg(n)))}
    ${re(Wn).map((t,n)=>e(Wn,n,Tc(n),Gh(n)))} ${qa()} ${bc()}
  </div>`}function Yv(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"";return l`<p class="order ${u.is_old?"old":""}">
    Cast <b>${t.casts}</b> of ${t.name} ahead${n}${$t(e.whole)?", for the whole run":""}.
  </p>`}function Zv(e,t,n){return l`<h3>
      Weigh for ${t.name} ${$t(e.whole)?l`<small>for the whole run</small>`:f}
    </h3>
    ${oe({key:`perch.${n}.make`,label:`Melt of ${t.material}`,shown:Ue(u.units,At(t,"make_")),size:"weigh",sum:cc(t,n)})}
    ${oe({key:`perch.${n}.each`,label:"Each weighs",note:`${N(t.volume_each_ml,2)} ml`,shown:Pe(u.units,t.mass_each_g,2),sum:cc(t,n)})}
    ${t.casting_s?l`<p>${Lo(t.casting_s)} of casting.</p>`:f} ${Qv(t,n)}`}function Qv(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return f;let i=s=>s===null?"not known":ae(Dt(u.units,s)),r=s=>{let c=(o?.embeds??[]).map(s).filter(p=>p!==null);return c.length?ae(Dt(u.units,Math.min(...c))):"none near"};return l`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?l`<div>
                <dt>Rests on a circle of</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Stands proud by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:f}
      ${o?l`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(s=>s.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(s=>s.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(s=>s.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(s=>s.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${N(o.displaced_ml,1)} ml</dd>
              </div>`:f}
    </dl>
    ${bi(`perch.${t}.fit`,"How the fit is measured",Eh(e,t))}`}function Xv(e,t){let n=og(e.dust,re(Wn),Ee("run",`/dust/${t}/name`),t);if(!n)return f;let o=p=>Ee("run",`/dust/${t}/${p}`),i=M("run",`/dust/${t}/per_piece`)!==void 0,r=["pieces of the batch",String(e.batch.pieces)],s=n.exposed_cm2===0&&!i,c=oe({key:`dust.${t}`,label:n.name,shown:Ue(u.units,At(n,"")),size:"weigh",sum:{formula:i?"powder = on one piece \xD7 pieces of the batch":"powder = on the surface \xD7 surface covered \xF7 share that lands \xD7 pieces of the batch",with:i?[["on one piece",o("per_piece"),"the run"],r]:[["on the surface",o("on_surface"),"the run"],["covered",o("covered")],["lands",o("lands")],r]}});return l`${c}${s?l`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`:f}`}function rg(e){let{cut:t}=e;return l`<div class="side">
      ${t?l`<p class="order ${u.is_old?"old":""}">
              Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}.
            </p>`:f}
      ${xi("cut",e)}
    </div>
    <div class="weights">
      ${t?l`${oe({key:"cut.bar",label:"A bar on average, fresh",note:e0(t),shown:Pe(u.units,e.piece.fresh_g),size:"weigh",sum:pc(t)})}
            ${oe({key:"cut.offcuts",label:"Offcuts",shown:Pe(u.units,t.offcuts_g),sum:pc(t)})}
            ${t0(t)}`:f}
    </div>
    <div class="all-questions">${Ua()} ${Rr()?f:qa()}</div>`}function e0(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${N(n,1)} to ${N(o,1)} g`}function t0(e){return e.one_more?.length?l`<ul class="limits">
    ${e.one_more.map(t=>l`<li>At ${t.size_text} ${t.direction} it gives ${t.bars} bars.</li>`)}
  </ul>`:f}var _o="/pour/layers",jo={at:_o,in_order:!0},Rc=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Ka=()=>re(jo);function n0(){let e=t=>Ka().some(n=>t in n);return Rc.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function Ac(e){let t=Ka(),n=n0();return t.length?l`<h3>
      Layers, lowest first ${e&&Xt(e)?l`<small>${Xt(e)}</small>`:f}
    </h3>
    ${Y({question:"All of them by",at:_o,is_told_elsewhere:!0,chosen:n,answers:Rc,puts:o=>i0(o,e)})}
    <div class="items">${t.map((o,i)=>r0(o,i,n,e))}</div>
    ${qe(jo,"One more layer on top",()=>Je(jo,{name:o0(t),[n]:""},"layer"))}`:l`<p class="choice">
      ${qe(jo,"Pour it in layers",()=>Je(jo,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function o0(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function sg(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function i0(e,t){let n=Ka(),o=u.is_old?void 0:t,i=(r,s)=>{let c=sg(o,r,s);return e==="parts"||!c||e==="depth"&&"propped"in r?"":e==="depth"?`${N(c.to_mm-c.from_mm,3)} mm`:`${N(c.mass_each_g,3)} g`};return n.map((r,s)=>{let c=Va(s),p=e!=="parts"&&n.length>1&&s===n.length-1;return{...c,...p?{rest:!0}:{[e]:i(r,s)}}})}var Va=e=>Xe("run",`${_o}/${e}`,[...Rc.map(([t])=>t),"rest"]);function r0(e,t,n,o){let i=`${_o}/${t}`,r=String(e.name)||`Layer ${t+1}`,s=sg(o,e,t);return l`<div class="part" id=${Oe(jo,t)} role="group" aria-label="Layer ${r}">
    ${s&&o?s0(o,s,t):l`<p class="part-title">${r}</p>`} ${Fe("run",i)}
    ${l0(e,t,n,r)}
    ${o&&s?s.colours.map((c,p)=>a0(o,s,c,t,p)):f}
    ${fe({name:i,pointers:["name","colours","propped"].map(c=>`${i}/${c}`),summary:"Name, colours, prop",body:()=>l` ${v({label:"Name of the layer",at:`${i}/name`})} ${m0(i,r)} ${f0(i,t)}
        ${Ye(jo,t,r)}`})}
  </div>`}function s0(e,t,n){return oe({key:`pour.layer.${n}`,label:t.name,note:`${_i(Dt(u.units,t.to_mm-t.from_mm))} thick, ${_i(Pe(u.units,t.mass_each_g))} each`,shown:t.g_text===void 0?Pe(u.units,t.g):Ue(u.units,t),size:"weigh",sum:Qf(e.pour,t)})}function a0(e,t,n,o,i){return oe({key:`pour.layer.${o}.${i}`,label:n.name,note:n.teaspoons?`about ${N(n.teaspoons,1)} tsp`:"",shown:$n(u.units,n),size:"weigh",sum:oh(e.pour,t,n,`${_o}/${o}/colours/${i}`)})}function l0(e,t,n,o){if(n==="parts")return u0(e,t,o);let i="rest"in e;return l`${i?f:v({label:`${o}, ${n}`,at:`${_o}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes what is left"
      @click=${()=>i?p0(t,n):c0(t,n)}
    >
      takes what is left
    </button>`}function u0(e,t,n){let o=`${_o}/${t}/parts`,i=r=>()=>{S({typed:void 0}),wt("run",o,Math.max(1,(Number(e.parts)||0)+r))};return l`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${v({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function c0(e,t){let n=Ka().map((o,i)=>i===e?{...Va(i),rest:!0}:o.rest?{...Va(i),[t]:""}:o);ut("run","takes what is left",_o,n)}function p0(e,t){let n=`${_o}/${e}`;ut("run","amount of the layer",n,{...Va(e),[t]:""},Io("run",`${n}/${t}`))}function m0(e,t){let n={at:`${e}/colours`,in_order:!0};return l`${re(n).map((o,i)=>{let r=`${n.at}/${i}`,s=String(o.name)||`colour ${i+1}`;return l`<div class="part" id=${Oe(n,i)} role="group" aria-label="${s} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${s}</p>
        ${Ye(n,i,s)}
      </div>
      ${Fe("run",r)}
      <div class="row">
        ${v({label:"Colour",at:`${r}/name`})}
        ${v({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${v({label:"Weight of a loose ml",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"Bulk density; needed for spoons."})}
      </div>
      ${Bo("run",r,s)}
    </div>`})}
  ${qe(n,"Add a colour",()=>Je(n,{name:"",rate:""},"colour"))}`}var d0=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, behind it"],["-y","\u2212y, before it"]];function f0(e,t){let n=`${e}/propped`,o=M("run",`${n}/low_side`);return t===re(jo).length-1&&M("run",n)===void 0?l`<p class="hint">The last layer is poured level.</p>`:tn({at:n,name:"the prop",title:"The mould is propped up",add:"Prop the mould up for this layer",blank:{angle:"",low_side:""},body:()=>l`${v({label:"Leans by",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${Y({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o,answers:d0,puts:r=>r})}
        ${v({label:"Low side, or its direction",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var wo=()=>A(u.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Dc(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=wo()==="depth"?n-o:o;S({typed:void 0}),wt("run",`/pour/line/${wo()}`,`${N(i,2)} mm`)}function ag(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=gr(A(u.run.now,`/pour/line/${wo()}`));return n===void 0?e.pour.below_brim_mm:wo()==="depth"?t-n:n}function h0(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=s=>t((s.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let s of["pointerup","pointercancel"])n.removeEventListener(s,r)};n.addEventListener("pointermove",i);for(let s of["pointerup","pointercancel"])n.addEventListener(s,r)}function g0(e){if(!u.measured)return f;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=ag(e),{share:o,h:i}=Jh(e,t-n),r=p=>h0(p,h=>Dc(e,n+h*i)),s=p=>{let h={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[p.key];h!==void 0&&(p.preventDefault(),Dc(e,n+h))},c=p=>p&&(p.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),l`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${N(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${ae(Dt(u.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${s}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function _0(e){let{pour:t}=e,n=ae(Dt(u.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each";return l`<p class="order ${u.is_old?"old":""}">
    ${o}, <b>${ae(Pe(u.units,t.mass_each_g))}</b> ${i}.
  </p>`}function lg(e){let{pour:t}=e,n=o=>()=>Dc(e,ag(e)+o);return l`<div class="side">
      ${_0(e)} ${xi("pour",e,g0(e))} ${cg(e)}
      <div class="stepper">
        <button type="button" @click=${n(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${v({label:wo()==="depth"?"Deep":"Below brim",at:`/pour/line/${wo()}`,unit:"mm"})}
        <button type="button" @click=${n(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${oe({key:"pour.mm",label:"1 mm is",shown:xt(u.units,t.ml_per_mm,2),note:`${wn(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,sum:Zf(t)})}
      ${oe({key:"pour.each",label:"Weigh into each",shown:Pe(u.units,t.mass_each_g),size:"weigh",note:`${N(t.volume_each_ml,1)} ml`,sum:Yf(t)})}
    </div>
    <div class="weights">
      ${zo(e)} ${Mc("pour","Weigh for the base",t.formula)} ${Ec("pour",t)}
      ${oe({key:"pour.make",label:"Base to make",shown:Pe(u.units,t.make_g),size:"weigh",sum:Ia("pour",t)})}
      ${oe({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],sum:Ba("pour",t)})}
    </div>
    <div class="more">${Ac(e)} ${ys("pour")}</div>`}function ug(){let e=wo();return l`<div class="side">
      ${cg()} ${Fe("run","/pour/line")}
      ${v({label:e==="depth"?"Deep":"Below brim",at:`/pour/line/${e}`,unit:"mm"})}
    </div>
    <div class="more">${Ac()} ${ys("pour")}</div>`}function cg(e){let t=n=>{if(n===wo())return;let o=e&&!u.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;ut("run","pour line","/pour/line",{[n]:o===void 0?"":`${N(o,3)} mm`})};return Ft("The pour line is measured",wo(),[["below_brim","From the brim"],["depth","From the floor"]],t)}function w0(e){return e.teaspoons?`about ${N(e.teaspoons,1)} tsp`:""}function $0(e){let t=e.set_aside_for_colours_g?`${ae(Ue(u.units,{g:e.set_aside_for_colours_g,scale_step_g:e.scale_step_g}))} of it for the colours`:"";return[w0(e),t].filter(Boolean).join(", ")}function Mc(e,t,n){return l`<div class="weigh-head">
    <h3>${t} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>fr(e)}
      aria-label="Change the formula ${e==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function Ec(e,t,n=e){return l`${Ta(t).map(({one:o,i})=>Fc(e,t,o,i,n))}`}function Fc(e,t,n,o,i=e){return oe({key:`${i}.${o}`,label:n.name,note:$0(n),shown:$n(u.units,n),size:"weigh",sum:nh(e,t,n)})}var b0=[0,50,80,100];function pg(e){let{pipe:t}=e;return t?l`<div class="side">
      <p class="order ${u.is_old?"old":""}">
        Pipe <b>${N(t.volume_each_ml,0)} ml</b> on each, ${ae(Pe(u.units,t.mass_each_g))} at this
        whip.
      </p>
      ${xi("pipe",e)}
      ${oe({key:"pipe.each",label:"Topping on each",shown:xt(u.units,t.volume_each_ml),note:`${N(t.in_headspace_each_ml,1)} ml of it below the brim`,sum:dh(t)})}
      ${v0(e)} ${fg()} ${P0(e)}
    </div>
    <div class="weights">
      ${zo(e)} ${Mc("pipe","Weigh for the topping",t.formula)}
      ${e.whippings.map((n,o)=>y0(e,n,o))}
      ${oe({key:"pipe.density",label:"Whipped density",note:`overrun ${N(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],sum:Ba("pipe",t)})}
      ${_c(t)}
    </div>
    <div class="more">${gc(t)} ${hc()}</div>`:Lc()}var Ss=e=>e===0?"pipe":`pipe.whipping${e}`;function Oc(e,t){let n=gi(e,t);return n?l`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:f}function y0(e,t,n){let o=Ss(n);return l`${Oc(e,t)} ${Ec("pipe",t,o)}
  ${oe({key:`${o}.make`,label:"Topping to make",note:gi(e,t),shown:Pe(u.units,t.make_g),size:"weigh",sum:Ia("pipe",t)})}`}function Lc(){return l`<div class="more">${gc()}</div>
    <div class="side">${fg()} ${M("run","/pipe/whip_now")===void 0?f:dg()}</div>
    <div class="weights">${_c()} ${Rh()}</div>
    <div class="more">${hc()}</div>`}var mg=e=>Xt(e)?l`<small>${Xt(e)}</small>`:f;function v0(e){return l`<h3>This bowl, now ${mg(e)}</h3>
    ${dg()} ${e.whippings.map((t,n)=>k0(e,t,n))}`}function k0(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whip.`:`Enough for the ${t.pieces} to make.`;return l`${Oc(e,t)}
  ${o==null?f:oe({key:`${Ss(n)}.now`,label:"This bowl pipes now",note:r,shown:[kt(o,"piece"),""],size:"weigh",sum:fh(t)})}
  ${S0(t,n)}`}function dg(){let e={holds:M("run","/pipe/whip/holds")??"",net:""};return tn({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:x0})}function x0(){return l`<div class="row">
    ${v({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})}
    ${v({label:"Cup holds",at:"/pipe/whip_now/holds",unit:"ml",short:!0})}
  </div>`}function S0(e,t){return e.readings?.length?l`<table class="readings">
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
        ${e.readings.map(n=>l`<tr class=${n.planned?"planned":""}>
              <th scope="row">${N(n.net_g,1)} g${n.planned?" (planned)":""}</th>
              <td>${N(n.overrun_percent,0)} %</td>
              <td>${n.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${bi(`${Ss(t)}.readings`,"How the table comes about",Dh(e))}`:f}function fg(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(Ee("run",e))?.[1]?.replace(",",".")),n=Xn("run",e);return l`<h3 id="recess">How far does the topping fill the recess below the brim?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${b0.map(o=>l`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>wt("run",e,`${o} %`)}
          >
            ${T0(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${v({label:"Or as a share",at:e,unit:"%",hint:n?void 0:"A trial piped on flat paper misses this."})}`}function T0(e){let t=52*(e/100);return l`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${tt`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function P0(e){let t=e.whippings.map(i=>({one:i,words:R0(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?f:l`<h3>What this batter allows ${mg(e)}</h3>
    ${t.map(({one:i,words:r})=>l`${Oc(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>l`<li class=${i.sets?"binds":""}>
            ${i.sets?l`<strong>Sets the batch: </strong>`:f}${i.text}
          </li>`)}
    </ul>
    ${bi("pipe.limits","How the limits come about",Mh(n))}`}function R0({piping_s:e,lye_spoonfuls:t}){return[e?`${Lo(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${Lo(t.altogether_s)}`:""].filter(Boolean).join("; ")}function gg(e){if(!$a(e))return f;let{whole:t}=e,{batches:n}=t.pieces,o=$t(t)?`${kt(n,"batch","batches")} together`:"all whippings together";return l`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${hg(e,"pour","The base, whole run")}
      ${t.pipe?hg(e,"pipe","The topping, whole run"):f} ${M0(e)}
    </div>
  </section>`}var A0=e=>t=>t.name===e.name&&t.goes_into===e.goes_into;function D0(e,t,n){return(t==="pour"?[{batter:e.pour,words:""}]:(e.pipe?.whippings??[]).map(i=>({batter:i,words:e.pipe.whippings.length>1||i.count>1?`, whipping of ${i.pieces}, ${mo(i.count)}`:""}))).flatMap(({batter:i,words:r})=>{let s=i.ingredients.find(A0(n));return s?[[r,ae($n(u.units,s))]]:[]})}function hg(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...Ta(i),...$r(i)];return l`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:s,i:c})=>Ga(`${t}.${c}`,s.name,$n(u.units,s),e,p=>D0(p,t,s)))}
    ${Ga(`${t}.make`,t==="pour"?"Base in all":"Topping in all",Pe(u.units,i.make_g),e,s=>[["",ae(Pe(u.units,s[t].make_g))]])}
  </div>`}var Ga=(e,t,n,o,i)=>oe({key:`needs.${e}`,label:t,shown:n,sum:_h(o.whole,i)});function M0(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,s)=>r.colours.map((c,p)=>({layer:r,one:c,i:s,j:p}))),o=t.dust??[];if(!n.length&&!o.length)return f;let i=r=>Ue(u.units,At(r,""));return l`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:s,i:c,j:p})=>Ga(`colour.${c}.${p}`,`${s.name}, for ${r.name}`,$n(u.units,s),e,h=>{let w=h.pour.layers?.[c]?.colours[p];return w?[["",ae($n(u.units,w))]]:[]}))}
    ${o.map((r,s)=>Ga(`dust.${s}`,r.name,i(r),e,c=>{let p=c.dust?.[s];return p?[["",ae(i(p))]]:[]}))}
  </div>`}function wg(e){return l`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye shelf</h2>
    ${zo(e)}
    <div class="jugs">
      ${_g({slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,pieces:e.batch.pieces,key:"pour"})}
      ${e.whippings.map((t,n)=>{let o=gi(e,t);return _g({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:t,pieces:e.batch.pieces,key:Ss(n)})})}
    </div>
    ${F0(e)} ${vc()} ${kc(e)}
  </section>`}function _g({slot:e,title:t,batter:n,pieces:o,key:i}){let{effective:r}=n.superfat_percent,s=hi(e,o).length>0,c=`danger-${i.replaceAll(".","-")}`,p=i===e;return l`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${$r(n).map(({one:h,i:w})=>Fc(e,n,h,w,i))}
    ${oe({key:`${i}.strength`,label:"Lye strength",note:`water ${N(n.water_to_pure_alkali,2)} : 1 to alkali; water ${N(n.water_percent_of_fats,1)} % of the fats`,shown:[`${N(n.lye_strength_percent,1)} %`,""],sum:ac(e,n)})}
    ${oe({key:`${i}.superfat`,label:"Effective superfat",shown:[`${Fn(r)}${s?" \u26A0":""}`,""],sum:Xf(e,n)})}
    ${gs(e,c,o)} ${$g(n.superfat_percent)} ${E0(e,n,i)}
    ${!p||M(e,"/superfat")===void 0?f:v({label:"Superfat aimed at",of:e,at:"/superfat",unit:"%",described_by:s?c:void 0,hint:u.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function $g(e){let{low:t,high:n,likely_low:o,likely_high:i,doubts:r}=e,s=`It lies between ${Fn(t)} and ${Fn(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Fn(o)} and ${Fn(i)}.`,p=r?.[0],h=p?l` Most of the doubt is ${p.cause}: ${p.remedy}.`:f;return qu(t)?l`<p class="mind of-plan">
    <strong>Mind</strong> At its lowest there is lye left over. ${s}${c}
    ${p?h:"A finer scale, a larger batch or a higher aim mends it."}
  </p>`:l`<p class="aside of-plan">${s}${c} Some fat is left over even at the lowest.${h}</p>`}function E0(e,t,n){return t.heat?l`${bg(t.heat)}
  ${bi(`${n}.heat`,"How the heat is reckoned",Ah(e,t))}`:f}function bg(e){let t=o=>ae(gf(u.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?Lo(o.shortest_min*60):"at once"} to ${Lo(o.longest_min*60)} ${o.in?`in ${o.in.replace(/^in /,"")}`:""}`);return l`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function F0(e){let t=e.lye_pot;if(!t)return f;let{units:n}=u,o=(i,r,s,c,p="")=>oe({key:`pot.${i}`,label:r,note:p,shown:s,size:"weigh",sum:c});return l`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${N(t.strength_percent,1)} %${Xt(e)&&`; ${Xt(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",Ue(n,At(t,"water_")),sh(e,t))}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,Ue(n,At(i,""),"down"),rh(e,i.name)))}
    ${o("lye","Lye in the pot",Ue(n,At(t,"lye_")),ah(t),O0(t))}
    ${t.shares.map((i,r)=>l`${o(`share.${r}`,`Out of it for ${i.batter}`,Ue(n,At(i,"lye_"),"down"),lh(e,t,r),`superfat then ${Fn(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,Ue(n,At(i,"top_up_")),uh(e,t,r)):f}
        ${gs(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?$g(i.superfat):f}`)}
    ${t.left_g?l`<p class="aside of-plan">
            ${ae(Ue(u.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:f}
    ${t.heat?bg(t.heat):f}
  </div>`}function O0(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=At(e,"lye_"),i=Ue(u.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${ae(i)} with the pot: make up with water to that after cooling`}var L0={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Mind",note:"Note"};function yg(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>l`<ul>
      ${r.map(s=>l`<li class=${s.severity}><strong>${L0[s.severity]??s.severity}</strong> ${s.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return l`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">What to watch <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?l`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:f}
  </section>`}function vg(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:s}=e.piece,c=r?"A bar on average, ":"",p=w=>c?c+w.toLowerCase():w,h=gh(e);return l`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${oe({key:"piece.fresh",label:p("Fresh"),shown:Pe(u.units,n),sum:h})}
    ${o===null?f:oe({key:"piece.cured",label:p("Cured"),shown:Pe(u.units,o),sum:h})}
    ${r?oe({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:Pe(u.units,r.cured_g??r.fresh_g),sum:h}):f}
    ${i===null?f:oe({key:"piece.label",label:"Net weight for the label",shown:Pe(u.units,i,0),sum:h})}
    ${s?oe({key:"piece.size",label:"Over all",shown:[`${[s.width_mm,s.depth_mm,s.height_mm].map(w=>N(w,0)).join(" \xD7 ")} mm`,""],sum:Oh(e)}):f}
    ${t&&t.amount!==null?l`${oe({key:"piece.cost",label:"Materials for one",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,sum:hh(e)})}
          ${t.unpriced.length?l`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:f}`:l`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
    ${W0(e)} ${C0(e)} ${xc()}
  </section>`}function C0(e){let t=e.label;if(!t)return f;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?l`<h3>${i}</h3>
          <p>${r}</p>`:f;return l`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>l`<li>${i.text}</li>`)}
    </ul>
  </details>`}function W0(e){let t=e.piece.cost?.materials.map(o=>o.name)??[];if(!t.length)return f;let n=o=>`/money/prices/${o.replaceAll("~","~0").replaceAll("/","~1")}`;return fe({name:"prices",pointers:["/money/prices"],summary:"Prices paid",body:()=>l` ${t.map(o=>l`<div class="row">
            ${v({label:`${o}, paid`,at:`${n(o)}/paid`,optional:!0,short:!0})}
            ${v({label:`for (pack of ${o})`,at:`${n(o)}/for`,unit:"g",optional:!0,short:!0})}
          </div>`)}`})}function kg(e){let t=Xt(e);return l`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">
      ${t?`Of ${t}: in`:"In"} the pieces ${ae(Pe(u.units,e.pour.in_pieces_g))} of base, lost
      ${ae(Pe(u.units,e.pour.lost_g))}${e.pipe?`; of topping ${ae(Pe(u.units,e.pipe.in_pieces_g))}, lost ${ae(Pe(u.units,e.pipe.lost_g))}`:""}.
    </p>
    <div class="row">
      ${bs("pour",e.pipe&&"Base")} ${e.pipe?bs("pipe","Topping"):f}
    </div>
    <div class="row">
      ${v({label:"Large scale reads",at:"/scales/large/reads",unit:"g",short:!0})}
      ${v({label:"Large scale holds",at:"/scales/large/holds",unit:"g",short:!0})}
      ${v({label:"Fine scale reads",at:"/scales/fine/reads",unit:"g",short:!0})}
      ${v({label:"Fine scale holds",at:"/scales/fine/holds",unit:"g",short:!0})}
    </div>
  </section>`}function xg(e){let t=n=>()=>{S({units:n}),localStorage.setItem("units",n)};return l`<header>
    <p class="mark" aria-hidden="true">▽ Brimwright</p>
    ${u.view==="run"||u.view==="formula"?l`<div class="tools" role="group" aria-label="Tools">
              <button type="button" @click=${e}>Runs and moulds</button>
              <button type="button" ?disabled=${!u.past.length} @click=${sr}>Undo</button>
              <button type="button" ?disabled=${!u.future.length} @click=${ca}>Redo</button>
            </div>
            <div class="tools" role="group" aria-label="Units">
              ${["metric","both","us"].map(n=>l`<button
                    type="button"
                    aria-pressed=${u.units===n?"true":"false"}
                    @click=${t(n)}
                  >
                    ${{metric:"g mm",both:"both",us:"oz in"}[n]}
                  </button>`)}
            </div>
            <p class="saving" role="status">${I0()}</p>`:f}
  </header>`}function I0(){let e=B0();if(e)return e;let{run:t}=u,n=u.formula_of==="apart"||!(nt(t)||t.theirs||t.failed);return u.view==="formula"&&n?N0():t.theirs?"Not saved: say which is to stay.":t.failed?`Not saved: ${t.failed}`:nt(t)?"Saving ...":t.shipped?"An example: your first change is saved as a copy.":`Saved in ${t.file}`}function B0(){let e=u.formulas.apart?"apart":"run",t=co(e);return t?`Not saved: ${t.file} changed underneath; say which is to stay.`:(e==="apart"?[u.formulas.apart]:[u.formulas.pour,u.formulas.pipe]).some(o=>o&&nt(o))?u.complaint&&u.complaint.file===""?`Not saved: ${u.complaint.problem}`:"Saving ...":""}function N0(){let e=u.formulas[u.formula_of];return e?e.shipped?"Came with the program: your first change is saved as a copy.":`Saved in ${e.file}`:""}function Sg(){let{plan:e}=u,t=e&&wa(e);return l`
    ${ma().map(n=>br(n))} ${Cc()}
    ${e?q0(e):l`<h1>${String(u.run.now.name??"")}</h1>`}
    ${e&&t?l`${V0(t)} ${wg(t)}
            <div class="beside">${yg(e)} ${vg(e)}</div>
            ${gg(t)} ${kg(t)} ${Y0(e)} ${zh(e)} ${z0(t)}`:l`<p class="hint">${u.complaint?"No figures until this is mended.":"Reading the run ..."}</p>
            ${H0()}`}
  `}function z0(e){let t=i=>()=>{let r=document.getElementById(i);r.tabIndex=-1,r.focus({preventScroll:!0}),r.scrollIntoView({block:"start"})},n=[["run-title","Top"],["lane-pour","Pour"],["lane-pipe","Pipe"],["lane-perch","Perch"],["lane-cut","Cut"],["shelf-title","Lye"],...Bu()?[]:[["watch-title","Watch"]],["piece-title","Piece"],["needs-title","Needs"],["mould-title","Mould"],["out-title","Print"]],o={"lane-pipe":yn(),"lane-cut":Bt(),"lane-perch":Rr(),"needs-title":$a(e)};return l`<nav class="parts" aria-label="Parts of this run">
    ${Bu()?l`<button type="button" class="danger" @click=${t("watch-title")}>
            <span aria-hidden="true">⚠</span> Danger
          </button>`:f}${n.filter(([i])=>o[i]??!0).map(([i,r])=>l`<button type="button" @click=${t(i)}>${r}</button>`)}
  </nav>`}function H0(){return l`<div class="row">
      ${v({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${v({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
    </div>
    ${wc()} ${u.complaint?j0():f}`}function j0(){let e=yn();return l`<div class="row">
      ${fo("Mould","/pour/mould",u.files?.moulds)}
      ${fo("Base","/pour/formula",u.files?.formulas)}
      ${e?fo("Topping","/pipe/formula",u.files?.formulas):f}
    </div>
    <div class="lanes">
      ${Uo("pour","Pour",ug())} ${e?Uo("pipe","Pipe",Lc()):f}
      ${Rr()?Uo("perch","Perch",Pc()):f}
      ${Bt()?Uo("cut","Cut",Ua()):f}
    </div>
    ${Ch()}`}function Cc(){let e=u.complaint;return l`<div class="complaints" role="status">
    ${e?l`<p class="alarm">
              <strong>${u.plan?"The figures below are from before.":"No figures yet."}</strong>
              ${e.field?l`<code>${e.field}</code>: `:f}${gn(e)}
            </p>
            ${e.is_fault?l`<button type="button" @click=${Wc}>Ask again</button>`:f}
            ${yr("run")?Ja(u.run.now,e.field,e.remedy,(t,n)=>wt("run",t,n)):f}
            ${Co()&&document.activeElement!==Co()||Tg()?l`<button type="button" @click=${J0}>Go to the field</button>`:f}`:f}
  </div>`}function Wc(){vt(),u.run.failed&&En()}var Tg=()=>["pour","pipe"].find(e=>u.complaint?.file&&u.complaint.field&&yr(e));function U0(e){fr(e),requestAnimationFrame(()=>requestAnimationFrame(()=>Co()?.focus()))}function J0(){let e=Co(),t=Tg();e?Yu(e):t&&U0(t)}function q0(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:s}=e.pieces,c=$t(e)?`${s} batches, ${kt(o,"filling")}`:ba(o,i);return l`<section class="order-of" aria-labelledby="run-title">
    <div>
      <h1 id="run-title">${e.run}</h1>
      ${typeof u.run.now.note=="string"?l`<p class="aside">${u.run.now.note}</p>`:f}
    </div>
    <div class="row">
      ${v({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${v({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
      ${fo("Mould","/pour/mould",u.files?.moulds)}
      ${fo("Base","/pour/formula",u.files?.formulas)}
      ${yn()?fo("Topping","/pipe/formula",u.files?.formulas):f}
      ${oe({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} casts, ${c}`:c,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",sum:Gf(e)})}
    </div>
    <div class="batches">${Wh(e)} ${wc()}</div>
    <p class="aside">Tap a figure with = beside it to see how it comes about.</p>
  </section>`}function V0(e){let t=yn();return l`<div class="lanes">
    ${Uo("pour","Pour",lg(e))} ${t?Uo("pipe","Pipe",pg(e)):f}
    ${Rr()?Uo("perch","Perch",ig(e)):f}
    ${Bt()?Uo("cut","Cut",rg(e)):f}
    ${t?f:K0("Pipe","This run has no topping.","Add a topping",Th,Ph())}
    ${Rr()||Bt()?f:ng()}
  </div>`}function Uo(e,t,n){let o=u.folded.has(e);return l`<section class="lane ${e}" aria-labelledby="lane-${e}">
    <div class="lane-head">
      <h2 id="lane-${e}" tabindex="-1">${t}</h2>
      <button
        type="button"
        aria-expanded=${o?"false":"true"}
        aria-label="${o?"Unfold":"Fold"} ${t}"
        @click=${()=>ir("folded",e)}
      >
        ${o?"Unfold":"Fold"}
      </button>
    </div>
    ${o?f:l`<div class="lane-body">${n}</div>`}
  </section>`}function K0(e,t,n,o,i=f){return l`<section class="lane unused" aria-label=${e}>
    <h2>${e}</h2>
    <p>${t}</p>
    <button type="button" @click=${o}>${n}</button>${i}
  </section>`}function G0(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:u.run.file,run:u.run.now}}};return e.pipe||e.perch?.length||e.pour.layers?.length?[o,n]:[n,o]}function Y0(e){let{measured:t}=u;if(!t)return f;let n=t.gauge.pockets[0],o=t.gauge.notes;return l`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${oe({key:"mould.brimful",label:"To the brim",note:`${ae(Dt(u.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:xt(u.units,n.brimful_ml),sum:Fh()})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the broken line is the pour line</figcaption>
        <level-curve
          role="img"
          aria-label="Level curve: volume by depth, with the pour line at ${e.pour.depth_mm} millimetres"
          .gauge=${t.gauge}
          .line=${e.pour.depth_mm}
        ></level-curve>
      </figure>
      <figure>
        <figcaption>In the round</figcaption>
        <solid-panel .views=${G0(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?l`<ul class="limits">
            ${o.map(i=>l`<li>${i.text}</li>`)}
          </ul>`:f}
  </section>`}var Pg=()=>ma().map(e=>br(e));function Rg(){let e=u.formula_of,t=u.formulas[e];if(!t)return l`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Pg()}${Cc()}
      <p>Reading the formula ...</p>
      ${Bc(e)}`;let n=u.plan&&wa(u.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return l`${Pg()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"A formula without a name")}</h1>
    <p class="aside">${Z0(e)}</p>
    <div class="choice">${Bc(e)}${e==="apart"?Q0():f}</div>
    ${X0(e,o,n)} ${ik(e)} ${Wf(e)} ${zf(e,o)} ${jf(e)}
    ${Tf(e)}
    <div class="choice">${Bc(e)}</div>`}var Ic=()=>String(u.run.now.name??u.run.file);function Z0(e){let t=u.formulas[e],n=t.shipped?" It came with the program: your first change makes a copy of it beside your runs.":"",o=u.formulas.pour===t&&u.formulas.pipe===t;return e==="apart"?`It lies open by itself; its figures are those of a base for "${Ic()}".${n}`:o?`Base and topping of "${Ic()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Ic()}".${n}`}function Bc(e){return l`<button type="button" class="strong" @click=${()=>{_s()}}>
    ${e==="apart"?"Close the formula":"Back to the run"}
  </button>`}function Q0(){return l`<button type="button" @click=${()=>{ju("pour")}}>Use it as the base</button> ${yn()?l`<button type="button" @click=${()=>{ju("pipe")}}>Use it as the topping</button>`:f}`}function X0(e,t,n){return l`<section class="strip" aria-label="What comes of it">
    ${t&&n?l`<dl>
            ${[...ek(e,n),...tk(e,t)].map(([o,i])=>l`<div class=${u.is_old?"old":""}>
                  <dt>${o}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:f}
    ${nk(e)}
  </section>`}function ek(e,t){let n=e==="pipe"?gi(t,t.whippings[0]).replace(/^one whipping: /,""):"";return n?[["For one whipping",n]]:$t(t.whole)?[["For one batch",qt(t.whole,t.batch)]]:[]}function tk(e,t){let n=hi(e).length?" \u26A0":"";return[["Fats",ae(Pe(u.units,t.fats_g))],["Superfat comes out at",`${Fn(t.superfat_percent.effective)}${n}`],...$r(t).map(({one:o})=>[o.name,ae($n(u.units,o))])]}function nk(e){let t=u.complaint;if(!t)return l`<div role="status"></div>`;let n=yr(e),o=n&&t.field!==""&&document.activeElement!==Co();return l`<div role="status" class="asks">
    <p class="alarm">
      <strong>${u.plan?"These figures are from before.":"No figures yet."}</strong>
      ${n?"":"Not about this formula: "}${ok(t.field)}${gn(t)}
    </p>
    ${t.is_fault?l`<button type="button" @click=${Wc}>Ask again</button>`:f}
    ${o?l`<button type="button" @click=${()=>Co()?.focus()}>Go to the field</button>`:f}
  </div>`}function ok(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function ik(e){return l`<section class="card" aria-label="Name">
    ${v({label:"Name",of:e,at:"/name",wide:!0})}
    ${fe({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>v({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Nc=e=>ee(u.new_formula,e);function Ag(e){let{name:t,copied:n}=u.new_formula,o=[...u.files?.formulas??[]].sort((r,s)=>Number(r.shipped)-Number(s.shipped)),i=r=>()=>e(async()=>{await r(t.trim()),Nc({name:"",copied:""})});return l`<section aria-labelledby="formulas-title">
    <h2 id="formulas-title">Formulas</h2>
    <ul class="cards">
      ${o.map(r=>l`<li>
            <button type="button" @click=${()=>e(()=>Hu(r.file))}>
              <b>${r.name||r.file}</b><span>${r.shipped?"came with the program":r.file}</span>
            </button>
          </li>`)}
    </ul>
    <h3>A new formula</h3>
    <div class="row">
      <div class="field">
        <label for="new-formula">What you call it</label>
        <input
          id="new-formula"
          .value=${Mt(t)}
          @input=${r=>Nc({name:r.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" ?disabled=${!t.trim()} @click=${i(tf)}>Begin from blank</button>
    </div>
    <div class="row">
      <div class="field choose">
        <label for="copied-formula">Or as a copy of</label>
        <select
          id="copied-formula"
          @change=${r=>Nc({copied:r.target.value})}
        >
          <option value="" .selected=${Mt(n==="")}>choose ...</option>
          ${o.map(r=>l`<option value=${r.file} .selected=${Mt(r.file===n)}>${r.name||r.file}</option>`)}
        </select>
      </div>
      <button
        type="button"
        ?disabled=${!t.trim()||!n}
        @click=${i(r=>nf(n,r))}
      >
        Make the copy
      </button>
    </div>
    ${t.trim()?"":l`<p class="hint">A new formula needs a name first.</p>`}
  </section>`}var Dg=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function rk({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,w])=>w),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],s=-e.brim-2*n+i,c=s-r-n,p=[e.left-n,c,e.right-e.left+2*n,-e.floor+n-c],h=(w,$)=>tt`<path class="shaded pour" fill-rule="evenodd" d=${$} /><path class="wall ${w}" fill-rule="evenodd" d=${$} />`;return l`<div class="drawing tall">
    <svg
      viewBox=${p.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${h("above",Dg(t,s))}${h("side",Dg(e.loops))}
    </svg>
  </div>`}function Ar(e,t=!1,n=[]){let o=n.length?l`<p class="hint" role="status">Still to be said: ${n.join(", ")}.</p>`:f;if(!e)return l`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return l`${rk(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${ae(xt(u.units,r.brimful_ml))}</b>${i.pockets.length>1?l` in each of ${i.pockets.length}, ${ae(xt(u.units,i.total_ml))} together`:f},
      ${ae(Dt(u.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?l`<p class="aside">
            ${i.measurements.map(s=>`By ${s.by} ${ae(xt(u.units,s.brimful_ml))}`).join("; ")}.
          </p>`:f}
    ${i.notes.length?l`<ul class="limits">
            ${i.notes.map(s=>l`<li>${s.text}</li>`)}
          </ul>`:f}`}var sk={mm:"in",g:"oz","\xB0C":"\xB0F"},ak={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Ya(e,t,n=""){let o=zc(e);if(o)return o.unit??"";let i=_r(A(me(),e));return ak[t]?.test(i)?i:n||(u.units==="us"?sk[t]??t:t)}var Za=()=>S({typed:void 0}),Dr=e=>`d${e.replaceAll("/","-")}`,zc=e=>u.typed?.key===Dr(e)?u.typed:void 0,Qa=e=>zc(e)?.text??String(A(me(),e)??"");function Jo(e){let{complaint:t}=Me();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function Hc(e,t,n,o){let{pointer:i}=e,r=s=>{let c=s.target.value,p=e.unit?Ya(i,e.unit,e.unit_before):"";S({typed:{key:Dr(i),text:c,unit:p}}),at(i,lk(e,c,p))};return l`<input
    id=${Dr(i)}
    .value=${Mt(Qa(i))}
    @input=${r}
    @blur=${Za}
    @keydown=${n??f}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??f}
    aria-describedby=${t??f}
    aria-invalid=${Jo(i)?"true":"false"}
  />`}function lk(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&xa(t)?`${t.trim()} ${n}`:t}function rn(e,t){let n=Dr(e.pointer),o=Jo(e.pointer),i=uk(e.pointer)??e.hint,r=e.unit?` (${Ya(e.pointer,e.unit,e.unit_before)})`:"";return l`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${Hc(e,o||i?`${n}-said`:void 0,t)}
    ${en(n,o,i)}
  </div>`}function uk(e){let t=A(me(),e),n=zc(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Xa(e){let t=e.toLowerCase(),{file:n,shipped:o}=Me().open,i=o?"":n;return u.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function Ts(e){let{open:t}=Me();try{if(await as(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));S({files:await Xi()})}catch(n){if(!(n instanceof X))throw n;return Du(n)}u.run.file&&(Qn(),vt()),e(t.file)}var In="/shape/points",Mg=500,Mr=(e,t)=>`${In}/${e}/${t}`,Eg=e=>Array.from({length:e.least},()=>({}));function Fg(e){let t=Qt(me(),In),n=pk(),{complaint:o}=Me(),i=o?.field===In&&Og()===void 0?o.line:void 0;return l`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>l`<span
              >${r.label} (${Ya(Mr(-1,r.name),r.unit,Lg(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,s)=>ck(e,s,n))}
    </div>
    ${i?l`<p class="complaint">${i}</p>`:f}
    <button type="button" ?disabled=${t.length>=Mg} @click=${()=>tl(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function ck(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=mk(t),r=s=>{let{name:c,label:p,unit:h}=e.columns[s],w={label:p,pointer:Mr(t,c),unit:h,unit_before:Lg(e,t,c)},$=`${p}, ${n.has(t)?o:`point ${t+1}`}`;return Hc(w,i?`point-${t}-said`:void 0,dk(e,t,s),$)};return l`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>tl(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Cg(e,t)}>×</button>
    ${i?l`<p id="point-${t}-said" class="complaint">${i}</p>`:f}
  </div>`}function pk(){let e=[...or(me()),...ia(me())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function Og(){let e=/\bpoints? (\d+)/.exec(Me().complaint?.line??"")?.[1];return e===void 0?void 0:or(me())[Number(e)-1]}function mk(e){let t=Me().complaint?.field===In&&Og()===e;return Jo(`${In}/${e}`)??(t?Me().complaint.line:void 0)}function Lg(e,t,n){let o=(i,r)=>_r(A(me(),Mr(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function el(e,t){queueMicrotask(()=>document.getElementById(Dr(Mr(e,t)))?.focus())}function tl(e,t){let n=[...Qt(me(),In)];n.length>=Mg||(n.splice(t,0,{}),Za(),at(In,n),el(t,e.columns[0].name))}function Cg(e,t,n=0){let o=Qt(me(),In).filter((i,r)=>r!==t);Za(),at(In,o.length?o:[{}]),el(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function dk(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let s=!Qa(Mr(t,o))&&!Qa(Mr(t,i));if(r.key==="Enter"&&r.shiftKey)tl(e,t+1);else if(r.key==="Enter"&&n===0)el(t,i);else if(r.key==="Enter"&&t+1<Qt(me(),In).length)el(t+1,o);else if(r.key==="Enter")tl(e,t+1);else if(r.key==="Backspace"&&s&&Qt(me(),In).length>1)Cg(e,t,t>0?1:0);else return;r.preventDefault()}}var jc={weighings:[""]},Uc=/\.(3mf|gltf|glb)$/i;function nl(e){let t=Mo(e);return t?{kind:e,points:Eg(t)}:{kind:e}}var fk=()=>at("/water",jc),eo=e=>Mn(me(),e),Ps=()=>is(me());function Wg(e){let{open:t,answer:n,is_old:o}=Me();return l`${br(t,()=>{Ts(e)})} ${wf(t)}
    ${eo("shape")&&eo("mesh")?l`<p class="hint">The mesh is measured; its measures are a second opinion.</p>`:f}
    ${eo("shape")?Ft("Shape",Ps(),Object.entries(Gm),hk):f}
    <div class="beside ${Mo(Ps())?"rows":""}">
      <div>
        ${Jc()} ${eo("shape")?_k():f} ${eo("mesh")?wk():f}
        ${qc()} ${eo("water")?bk():f} ${vk()}
      </div>
      <div class="stays">${Ar(n,o,Bg())} ${kk(e)}</div>
    </div>`}function hk(e){let t={...Me().shapes,[Ps()]:me().shape};ee(Me(),{shapes:t,answer:void 0}),at("/shape",t[e]??nl(e))}function gk(){let{shipped:e,file:t}=Me().open;return e?u.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function Jc(){let e=gk();return rn({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function _k(){let e=Ps(),t=Mo(e);return l`${nr(e).length?l`<div class="row">
          ${nr(e).map(n=>rn({...n,pointer:`/shape/${n.name}`}))}
        </div>`:f}
  ${t?Fg(t):f}`}function qc(e=uu(me())){return l`<div class="row">
      ${e?f:rn({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${rn({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${rn({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${rn({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Vc=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Kc=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function wk(){let e=o=>String(A(me(),`/mesh/${o}`)??""),t=(o,i,r)=>{let s=Jo(`/mesh/${i}`);return l`<h4>${o}</h4>
      ${Ft(o,e(i),r,c=>at(`/mesh/${i}`,c||void 0))}
      ${s?l`<p class="complaint">${s}</p>`:f}`},n=Jo("/mesh/file");return l`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?l`<p class="complaint">${n}</p>`:f}
    ${Uc.test(e("file"))&&!e("unit")?f:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Vc)} ${t("Which way is up","up",Kc)}
    ${e("role")==="body"?$k():f}
    <div class="row">
      ${rn({label:"Hollows to fill, by number",pointer:"/mesh/group",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${rn({label:"Straight up, if it leans",pointer:"/mesh/leaning_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function $k(){let e=A(me(),"/mesh/on_board")===!0?"yes":"no";return l`<h4>Open below, and stood on a board?</h4>
    ${Ft("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>at("/mesh/on_board",t==="yes"?!0:void 0))}`}function bk(){let e=A(me(),"/water/to"),t=e===void 0?void 0:e==="brim"?"brim":A(e,"/depth")!==void 0?"depth":"below_brim",n=r=>at("/water/to",r==="brim"?"brim":{[r]:""}),o=A(me(),"/water/of"),i=t===void 0||t==="brim"?Jo("/water/to"):void 0;return l`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${rn({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${Ft("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?l`<p class="complaint">${i}</p>`:f}
    ${t==="depth"?rn({label:"Depth of the water",pointer:"/water/to/depth",unit:"mm"}):f}
    ${t==="below_brim"?rn({label:"Water below the brim",pointer:"/water/to/below_brim",unit:"mm"}):f}
    <h4>Weighed in</h4>
    ${Ft("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>at("/water/of",r))}
    <div class="row">
      ${Qt(me(),"/water/weighings").map((r,s)=>rn({label:`Water, round ${s+1}`,pointer:`/water/weighings/${s}`,unit:"g"},yk(s)))}
    </div>
    ${Me().complaint?.field==="/water/weighings"?l`<p class="complaint">${Me().complaint.line}</p>`:f}
    <button type="button" @click=${Ig}>One more round</button>`}function Ig(){let e=Qt(me(),"/water/weighings").length;at(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var yk=e=>t=>{t.key==="Enter"&&(e+1===Qt(me(),"/water/weighings").length?Ig():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function vk(){let e=(t,n)=>l`<button type="button" @click=${n}>${t}</button>`;return l`<div class="choice">
    ${eo("shape")?f:e("Add measures, as a second opinion",()=>at("/shape",nl("block")))}
    ${eo("shape")&&eo("mesh")?e("Leave the measures out",()=>at("/shape",void 0)):f}
    ${eo("water")?e("Leave the water out",()=>at("/water",void 0)):e("Add weighed water",fk)}
  </div>`}function Bg(){let e=ia(me()).length;return e?[...rs(me()),e===1?"the other number of a point":`the other numbers of ${e} points`]:rs(me())}function kk(e){let t=String(me().name??"").trim(),n=Xa(t),{open:o,answer:i,is_old:r,complaint:s}=Me(),c=i&&!r&&!s&&!Bg().length&&t&&!n,p=o.shipped?"":o.file;return l`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{Ts(e)}}>
      ${p?"Save the change":"Use this mould"}
    </button>
    ${p?l`<p class="aside">It stays in ${p}.</p>`:f}
    ${t?f:l`<p class="hint">Give it a name first.</p>`} ${Gc(t,n)}
    ${s?l`<p class="alarm" role="status">${xk(s.field)}${s.line}</p>
            ${Ja(me(),s.field,s.line,at)}`:f}`}var Gc=(e,t)=>t?l`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:f;function xk(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=nr(Ps()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var Sk=200*2**20;async function Ng(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,asked:0};if(S({mesh:t}),at("/name",e.name.replace(/\.\w+$/,"")),e.size>Sk){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return ee(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Jm(e,o=>ee(t,{share:o}));ee(t,{share:1,upload:n.file}),await Hg(t)}catch(n){ee(t,{complaint:n instanceof X?n.message:String(n)})}}async function Hg(e){let t=e.asked+1;ee(e,{asked:t,is_measuring:!0,complaint:void 0,answer:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let s=await ar({file:n,unit:o,role:i,up:r});t===e.asked&&ee(e,{answer:s,is_measuring:!1})}catch(s){if(!(s instanceof X))throw s;if(t!==e.asked)return;let c=o?e.sizes:Tk(s.complaint.problem),p=c.length&&!o?void 0:gn(s.complaint);ee(e,{sizes:c,complaint:p,is_measuring:!1})}}function Tk(e){return[...e.matchAll(/([\d.]+ x [\d.]+ x [\d.]+) (mm|cm|in)\b/g)].slice(0,3).map(([,t,n])=>[n,t.replaceAll(" x "," \xD7 ")])}function Yc(e,t){ee(e,t),Hg(e)}function jg(e,t){return l` <div class="drop" @dragover=${i=>i.preventDefault()} @drop=${i=>{i.preventDefault(),Ng(i.dataTransfer?.files[0])}}>
      <label for="mesh-file">Drop a mesh file here, or choose one: STL, OBJ, PLY, OFF, 3MF, glTF or GLB</label>
      <input id="mesh-file" type="file" accept=".stl,.obj,.ply,.off,.3mf,.gltf,.glb" @change=${i=>{let r=i.target;Ng(r.files?.[0]),r.value=""}} />
    </div>
    ${u.mesh?Pk(u.mesh,e,t):f}`}function Pk(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,s])=>[r,s?`${r}: ${s} ${r}`:r]);return l` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?l`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:f}
    ${e.is_measuring?l`<p role="status">Measuring ...</p>`:f}
    ${e.upload&&!Uc.test(e.name)?l`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${Ft("Unit of the file's numbers",e.unit,i,r=>Yc(e,{unit:r}))}`:f}
    ${e.complaint?l`<p class="alarm" role="alert">${e.complaint}</p>`:f}
    ${e.upload&&(e.unit||e.answer)?l`<h4>What it shows</h4>
            ${Ft("Role",e.role??e.answer?.gauge.role,Vc,r=>Yc(e,{role:r}))}
            <h4>Which way is up</h4>
            ${Ft("Up",e.up??"",Kc,r=>Yc(e,{up:r||void 0}))}`:f}
    ${e.answer?l`${Ar(e.answer)} ${Rk(e,t,n)}`:f}`}var Ug=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function Rk(e,t,n){let o=String(me().name??"").trim(),i=Xa(o),r=o&&!i&&!e.is_keeping;return l`${Jc()} ${qc(Ug(e))} ${Gc(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>zg(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>zg(e,n)}>
        Say more about it first
      </button>
    </div>
    ${e.is_keeping?l`<p role="status">Keeping it ...</p>`:f}
    <p class="hint">
      More is: water weighed in it, measures as a second opinion, a mesh that leans or stands on a board.
    </p>`}async function zg(e,t,n){ee(e,{is_keeping:!0});try{let o=Ak(e,await qm(e.upload,Mk(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await Dk(o))return t(o);lr(o,"mesh",Me().title),await Ts(n),ee(e,{complaint:u.mould?.complaint?.line})}catch(o){ee(e,{complaint:o instanceof X?o.message:String(o)})}ee(e,{is_keeping:!1})}function Ak(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=me();return{...i,...Ug(e)||o===void 0?{}:{cavities:o},mesh:n}}async function Dk(e){try{return await Ro({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof X&&t.status===422)return!1;throw t}}var Mk=e=>tr(e.replaceAll(/[^\w.-]+/g,"_"),u.files?.meshes??[]);var ol={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Jg={schema:"brimwright.mould/1",name:"",cavities:1,owned:1};function qg(e){di();let t={...Jg,shape:nl("block")};e==="mesh"?lr(Jg,"mesh",ol[e]):lr(e==="water"?{...t,water:jc}:t,"form",ol[e]),il()}async function Vg(e,t){di(),await vd(e,t),il()}async function Kg(e){di(),await kd(e),il()}function Ek(e){lr(e,"form","More about this mould"),il()}function il(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Gg(e){if(!u.mould)return;let{way:t,title:n}=u.mould;return l`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?jg(e,Ek):Wg(e)}
  </section>`}var Zc=()=>S({chosen_mould:void 0});function rl(e,t){let n=u.files?.moulds.find(r=>r.file===e),o=u.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,owned:1,told:t};S({chosen_mould:i}),Fk(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Fk(e){try{let[t,n]=await Promise.all([ar({file:e.file}),_n(e.file)]);ee(e,{answer:t,owned:e.shipped?1:Number(Rt(n.text)?.owned??1)})}catch(t){ee(e,{complaint:t instanceof X?t.message:String(t)})}}function Yg(e,t){let n=()=>t(async()=>{await Vg(e.file,e.shipped),Zc()});return l`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"of the catalogue":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?l`<p role="status">${e.told}</p>`:f} ${e.note?l`<p>${e.note}</p>`:f}
    ${e.complaint?l`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:f}
    <div class="beside">
      <div>
        ${e.answer?Ar(e.answer):e.complaint?f:l`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?f:Ok(e,t)}
    </div>
  </section>`}function Ok(e,t){let n=o=>()=>t(()=>Zd({mould:e.file,name:e.name,formula:o,...Lk(e.answer,e.owned)}));return l`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(u.files?.formulas??[]).map(o=>l`<li>
            <button type="button" ?disabled=${!e.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function Lk({gauge:e},t){let n=e.pockets[0];return{cavities:e.pockets.length*t,deep_mm:n.brim_mm-n.floor_mm}}function sl(){if(u.formulas.apart)return void _s().then(e=>e&&sl());S({view:"start",start_complaint:""}),Zc(),di(),al(Ck),requestAnimationFrame(()=>document.querySelector("h1")?.focus())}async function Ck(){S({files:await Xi()}),_a()}function Wk(e){di(),rl(e,`Saved in ${e}.`)}async function al(e){S({start_complaint:""});try{await e()}catch(t){S({start_complaint:t instanceof X?t.message:String(t)})}}async function Qg(e){await al(e),window.scrollTo(0,0)}function Xg(){let{chosen_mould:e,start_complaint:t}=u,n=Gg(Wk);return l` <h1 tabindex="-1">What will you make?</h1>
    <p class="choice">
      ${u.run.file?l`<button type="button" @click=${()=>S({view:"run"})}>Back to the run</button>`:f}
      ${e||n?l`<button type="button" @click=${sl}>Back to runs and moulds</button>`:f}
    </p>
    ${t?l`<p class="alarm" role="alert">${t}</p>`:f}
    ${(u.files?.cut??[]).map(o=>l`<p class="alarm">
          More lies in ${o.folder} than is looked at: ${o.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}
    ${e?Yg(e,Qg):n||l`${Ik()} ${zk()} ${Bk()} ${Ag(al)}`}`}function Ik(){let e=u.files?.runs??[],t=e.filter(o=>!o.shipped),n=e.filter(o=>o.shipped);return l`<section aria-labelledby="runs-title">
    <h2 id="runs-title">Open a run</h2>
    ${t.length?l`<ul class="cards">
            ${t.map(Zg)}
          </ul>`:l`<p class="aside">None of your own in ${u.files?.folder} yet.</p>`}
    <h3>Examples</h3>
    <ul class="cards">
      ${n.map(Zg)}
    </ul>
  </section>`}function Zg(e){return l`<li>
    <button type="button" @click=${()=>Qg(()=>dr(e.file))}>
      <b>${e.name||e.file}</b><span>${e.file}</span>
    </button>
  </li>`}function Bk(){return l`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">A mould that is there: make a run with it, or change it</h2>
    <ul class="cards">
      ${Nk()}${u.catalogue.map(e=>l`<li>
            <button type="button" @click=${()=>rl(e.path)}>
              <b>${e.name}</b
              ><span>${ae(xt(u.units,e.brimful_ml))}, ${e.cavities} in one; ${e.description}</span>
            </button>
          </li>`)}
    </ul>
  </section>`}function Nk(){return(u.files?.moulds??[]).filter(t=>!t.shipped).map(t=>l`<li>
        <button type="button" @click=${()=>rl(t.file)}>
          <b>${t.name||t.file}</b><span>${Uk(t.file)}</span>
        </button>
      </li>`)}function zk(){return l`<section aria-labelledby="own-title">
    <h2 id="own-title">New run with a mould of your own</h2>
    ${Hk()}
    <div class="choice">
      ${Object.entries(ol).map(([e,t])=>l`<button type="button" @click=${()=>qg(e)}>${t}</button>`)}
    </div>
  </section>`}function Hk(){return Xm(lo).map(e=>{let t=String(Rt(e.text)?.name??"").trim()||jk(e)||"a mould without a name yet";return l`<div class="banner">
      <p>What you typed of <b>${t}</b> is still here, and in no file yet.</p>
      <div class="choice">
        <button type="button" @click=${()=>al(()=>Kg(e))}>Go on with it</button>
        <button type="button" @click=${()=>{pi(lo,e.id),Dn()}}>Let it go</button>
      </div>
    </div>`})}var jk=({file:e})=>u.files?.moulds.find(t=>t.file===e)?.name;function Uk(e){let t=Bd(e);return t?"complaint"in t?`your own, ${e}; it cannot be measured: ${t.complaint}`:`${ae(xt(u.units,t.brimful_ml))}, ${t.cavities} in one; your own, ${e}`:`your own, ${e}; measuring ...`}var Jk="uplot",qk="u-hz",Vk="u-vt",Kk="u-title",Gk="u-wrap",Yk="u-under",Zk="u-over",Qk="u-axis",Pi="u-off",Xk="u-select",ex="u-cursor-x",tx="u-cursor-y",nx="u-cursor-pt",ox="u-legend",ix="u-live",rx="u-inline",sx="u-series",ax="u-marker",e_="u-label",lx="u-value",As="width",Ds="height";var t_="bottom",Er="left",Qc="right",hp="#000",n_=hp+"0",Xc="mousemove",o_="mousedown",ep="mouseup",i_="mouseenter",r_="mouseleave",s_="dblclick",ux="resize",cx="scroll",a_="change",ml="dppxchange",gp="--",Br=typeof window<"u",rp=Br?document:null,Or=Br?window:null,px=Br?navigator:null,ye,ll;function sp(){let e=devicePixelRatio;ye!=e&&(ye=e,ll&&lp(a_,ll,sp),ll=matchMedia(`(min-resolution: ${ye-.001}dppx) and (max-resolution: ${ye+.001}dppx)`),Ri(a_,ll,sp),Or.dispatchEvent(new CustomEvent(ml)))}function sn(e,t){if(t!=null){let n=e.classList;!n.contains(t)&&n.add(t)}}function ap(e,t){let n=e.classList;n.contains(t)&&n.remove(t)}function Be(e,t,n){e.style[t]=n+"px"}function Bn(e,t,n,o){let i=rp.createElement(e);return t!=null&&sn(i,t),n?.insertBefore(i,o),i}function kn(e,t){return Bn("div",e,t)}var l_=new WeakMap;function to(e,t,n,o,i){let r="translate("+t+"px,"+n+"px)",s=l_.get(e);r!=s&&(e.style.transform=r,l_.set(e,r),t<0||n<0||t>o||n>i?sn(e,Pi):ap(e,Pi))}var u_=new WeakMap;function c_(e,t,n){let o=t+n,i=u_.get(e);o!=i&&(u_.set(e,o),e.style.background=t,e.style.borderColor=n)}var p_=new WeakMap;function m_(e,t,n,o){let i=t+""+n,r=p_.get(e);i!=r&&(p_.set(e,i),e.style.height=n+"px",e.style.width=t+"px",e.style.marginLeft=o?-t/2+"px":0,e.style.marginTop=o?-n/2+"px":0)}var _p={passive:!0},mx={..._p,capture:!0};function Ri(e,t,n,o){t.addEventListener(e,n,o?mx:_p)}function lp(e,t,n,o){t.removeEventListener(e,n,_p)}Br&&sp();function Nn(e,t,n,o){let i;n=n||0,o=o||t.length-1;let r=o<=2147483647;for(;o-n>1;)i=r?n+o>>1:an((n+o)/2),t[i]<e?n=i:o=i;return e-t[n]<=t[o]-e?n:o}function N_(e){return(n,o,i)=>{let r=-1,s=-1;for(let c=o;c<=i;c++)if(e(n[c])){r=c;break}for(let c=i;c>=o;c--)if(e(n[c])){s=c;break}return[r,s]}}var z_=e=>e!=null,H_=e=>e!=null&&e>0,hl=N_(z_),dx=N_(H_);function fx(e,t,n,o=0,i=!1){let r=i?dx:hl,s=i?H_:z_;[t,n]=r(e,t,n);let c=e[t],p=e[t];if(t>-1)if(o==1)c=e[t],p=e[n];else if(o==-1)c=e[n],p=e[t];else for(let h=t;h<=n;h++){let w=e[h];s(w)&&(w<c?c=w:w>p&&(p=w))}return[c??Re,p??-Re]}function gl(e,t,n,o){let i=h_(e),r=h_(t);e==t&&(i==-1?(e*=n,t/=n):(e/=n,t*=n));let s=n==10?$o:j_,c=i==1?an:xn,p=r==1?xn:an,h=c(s(pt(e))),w=p(s(pt(t))),$=Lr(n,h),y=Lr(n,w);return n==10&&(h<0&&($=Ae($,-h)),w<0&&(y=Ae(y,-w))),o||n==2?(e=$*i,t=y*r):(e=V_(e,$),t=_l(t,y)),[e,t]}function wp(e,t,n,o){let i=gl(e,t,n,o);return e==0&&(i[0]=0),t==0&&(i[1]=0),i}var $p=.1,d_={mode:3,pad:$p},Es={pad:0,soft:null,mode:0},hx={min:Es,max:Es};function dl(e,t,n,o){return wl(n)?f_(e,t,n):(Es.pad=n,Es.soft=o?0:null,Es.mode=o?3:0,f_(e,t,hx))}function $e(e,t){return e??t}function gx(e,t,n){for(t=$e(t,0),n=$e(n,e.length-1);t<=n;){if(e[t]!=null)return!0;t++}return!1}function f_(e,t,n){let o=n.min,i=n.max,r=$e(o.pad,0),s=$e(i.pad,0),c=$e(o.hard,-Re),p=$e(i.hard,Re),h=$e(o.soft,Re),w=$e(i.soft,-Re),$=$e(o.mode,0),y=$e(i.mode,0),T=t-e,P=$o(T),W=Nt(pt(e),pt(t)),V=$o(W),K=pt(V-P);(T<1e-24||K>10)&&(T=0,(e==0||t==0)&&(T=1e-24,$==2&&h!=Re&&(r=0),y==2&&w!=-Re&&(s=0)));let D=T||W||1e3,q=$o(D),E=Lr(10,an(q)),le=D*(T==0?e==0?.1:1:r),B=Ae(V_(e-le,E/10),24),ue=e>=h&&($==1||$==3&&B<=h||$==2&&B>=h)?h:Re,ne=Nt(c,B<ue&&e>=ue?ue:zn(ue,B)),de=D*(T==0?t==0?.1:1:s),te=Ae(_l(t+de,E/10),24),F=t<=w&&(y==1||y==3&&te>=w||y==2&&te<=w)?w:-Re,se=zn(p,te>F&&t<=F?F:Nt(F,te));return ne==se&&ne==0&&(se=100),[ne,se]}var _x=new Intl.NumberFormat(Br?px.language:"en-US"),bp=e=>_x.format(e),ln=Math,pl=ln.PI,pt=ln.abs,an=ln.floor,ct=ln.round,xn=ln.ceil,zn=ln.min,Nt=ln.max,Lr=ln.pow,h_=ln.sign,$o=ln.log10,j_=ln.log2,wx=(e,t=1)=>ln.sinh(e)*t,tp=(e,t=1)=>ln.asinh(e/t),Re=1/0;function g_(e){return($o((e^e>>31)-(e>>31))|0)+1}function up(e,t,n){return zn(Nt(e,t),n)}function U_(e){return typeof e=="function"}function he(e){return U_(e)?e:()=>e}var $x=()=>{},J_=e=>e,q_=(e,t)=>t,bx=e=>null,__=e=>!0,w_=(e,t)=>e==t,yx=/\.\d*?(?=9{6,}|0{6,})/gm,Ai=e=>{if(G_(e)||Vo.has(e))return e;let t=`${e}`,n=t.match(yx);if(n==null)return e;let o=n[0].length-1;if(t.indexOf("e-")!=-1){let[i,r]=t.split("e");return+`${Ai(i)}e${r}`}return Ae(e,o)};function Si(e,t){return Ai(Ae(Ai(e/t))*t)}function _l(e,t){return Ai(xn(Ai(e/t))*t)}function V_(e,t){return Ai(an(Ai(e/t))*t)}function Ae(e,t=0){if(G_(e))return e;let n=10**t,o=e*n*(1+Number.EPSILON);return ct(o)/n}var Vo=new Map;function K_(e){return((""+e).split(".")[1]||"").length}function Os(e,t,n,o){let i=[],r=o.map(K_);for(let s=t;s<n;s++){let c=pt(s),p=Ae(Lr(e,s),c);for(let h=0;h<o.length;h++){let w=e==10?+`${o[h]}e${s}`:o[h]*p,$=(s>=0?0:c)+(s>=r[h]?0:r[h]),y=e==10?w:Ae(w,$);i.push(y),Vo.set(y,$)}}return i}var Fs={},yp=[],Cr=[null,null],qo=Array.isArray,G_=Number.isInteger,vx=e=>e===void 0;function $_(e){return typeof e=="string"}function wl(e){let t=!1;if(e!=null){let n=e.constructor;t=n==null||n==Object}return t}function kx(e){return e!=null&&typeof e=="object"}var xx=Object.getPrototypeOf(Uint8Array),Y_="__proto__";function Wr(e,t=wl){let n;if(qo(e)){let o=e.find(i=>i!=null);if(qo(o)||t(o)){n=Array(e.length);for(let i=0;i<e.length;i++)n[i]=Wr(e[i],t)}else n=e.slice()}else if(e instanceof xx)n=e.slice();else if(t(e)){n={};for(let o in e)o!=Y_&&(n[o]=Wr(e[o],t))}else n=e;return n}function it(e){let t=arguments;for(let n=1;n<t.length;n++){let o=t[n];for(let i in o)i!=Y_&&(wl(e[i])?it(e[i],Wr(o[i])):e[i]=Wr(o[i]))}return e}var Sx=0,Tx=1,Px=2;function Rx(e,t,n){for(let o=0,i,r=-1;o<t.length;o++){let s=t[o];if(s>r){for(i=s-1;i>=0&&e[i]==null;)e[i--]=null;for(i=s+1;i<n&&e[i]==null;)e[r=i++]=null}}}function Ax(e,t){if(Ex(e)){let s=e[0].slice();for(let c=1;c<e.length;c++)s.push(...e[c].slice(1));return Fx(s[0])||(s=Mx(s)),s}let n=new Set;for(let s=0;s<e.length;s++){let p=e[s][0],h=p.length;for(let w=0;w<h;w++)n.add(p[w])}let o=[Array.from(n).sort((s,c)=>s-c)],i=o[0].length,r=new Map;for(let s=0;s<i;s++)r.set(o[0][s],s);for(let s=0;s<e.length;s++){let c=e[s],p=c[0];for(let h=1;h<c.length;h++){let w=c[h],$=Array(i).fill(void 0),y=t?t[s][h]:Tx,T=[];for(let P=0;P<w.length;P++){let W=w[P],V=r.get(p[P]);W===null?y!=Sx&&($[V]=W,y==Px&&T.push(V)):$[V]=W}Rx($,T,i),o.push($)}}return o}var Dx=typeof queueMicrotask>"u"?e=>Promise.resolve().then(e):queueMicrotask;function Mx(e){let t=e[0],n=t.length,o=Array(n);for(let r=0;r<o.length;r++)o[r]=r;o.sort((r,s)=>t[r]-t[s]);let i=[];for(let r=0;r<e.length;r++){let s=e[r],c=Array(n);for(let p=0;p<n;p++)c[p]=s[o[p]];i.push(c)}return i}function Ex(e){let t=e[0][0],n=t.length;for(let o=1;o<e.length;o++){let i=e[o][0];if(i.length!=n)return!1;if(i!=t){for(let r=0;r<n;r++)if(i[r]!=t[r])return!1}}return!0}function Fx(e,t=100){let n=e.length;if(n<=1)return!0;let o=0,i=n-1;for(;o<=i&&e[o]==null;)o++;for(;i>=o&&e[i]==null;)i--;if(i<=o)return!0;let r=Nt(1,an((i-o+1)/t));for(let s=e[o],c=o+r;c<=i;c+=r){let p=e[c];if(p!=null){if(p<=s)return!1;s=p}}return!0}var Z_=["January","February","March","April","May","June","July","August","September","October","November","December"],Q_=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function X_(e){return e.slice(0,3)}var Ox=Q_.map(X_),Lx=Z_.map(X_),Cx={MMMM:Z_,MMM:Lx,WWWW:Q_,WWW:Ox};function Rs(e){return(e<10?"0":"")+e}function Wx(e){return(e<10?"00":e<100?"0":"")+e}var Ix={YYYY:e=>e.getFullYear(),YY:e=>(e.getFullYear()+"").slice(2),MMMM:(e,t)=>t.MMMM[e.getMonth()],MMM:(e,t)=>t.MMM[e.getMonth()],MM:e=>Rs(e.getMonth()+1),M:e=>e.getMonth()+1,DD:e=>Rs(e.getDate()),D:e=>e.getDate(),WWWW:(e,t)=>t.WWWW[e.getDay()],WWW:(e,t)=>t.WWW[e.getDay()],HH:e=>Rs(e.getHours()),H:e=>e.getHours(),h:e=>{let t=e.getHours();return t==0?12:t>12?t-12:t},AA:e=>e.getHours()>=12?"PM":"AM",aa:e=>e.getHours()>=12?"pm":"am",a:e=>e.getHours()>=12?"p":"a",mm:e=>Rs(e.getMinutes()),m:e=>e.getMinutes(),ss:e=>Rs(e.getSeconds()),s:e=>e.getSeconds(),fff:e=>Wx(e.getMilliseconds())};function vp(e,t){t=t||Cx;let n=[],o=/\{([a-z]+)\}|[^{]+/gi,i;for(;i=o.exec(e);)n.push(i[0][0]=="{"?Ix[i[1]]:i[0]);return r=>{let s="";for(let c=0;c<n.length;c++)s+=typeof n[c]=="string"?n[c]:n[c](r,t);return s}}var Bx=new Intl.DateTimeFormat().resolvedOptions().timeZone;function Nx(e,t){let n;return t=="UTC"||t=="Etc/UTC"?n=new Date(+e+e.getTimezoneOffset()*6e4):t==Bx?n=e:(n=new Date(e.toLocaleString("en-US",{timeZone:t})),n.setMilliseconds(e.getMilliseconds())),n}var ew=e=>e%1==0,fl=[1,2,2.5,5],zx=Os(10,-32,0,fl),tw=Os(10,0,32,fl),Hx=tw.filter(ew),Ti=zx.concat(tw),kp=`
`,nw="{YYYY}",b_=kp+nw,ow="{M}/{D}",Ms=kp+ow,ul=Ms+"/{YY}",iw="{aa}",jx="{h}:{mm}",Fr=jx+iw,y_=kp+Fr,v_=":{ss}",ke=null;function rw(e){let t=e*1e3,n=t*60,o=n*60,i=o*24,r=i*30,s=i*365,p=(e==1?Os(10,0,3,fl).filter(ew):Os(10,-3,0,fl)).concat([t,t*5,t*10,t*15,t*30,n,n*5,n*10,n*15,n*30,o,o*2,o*3,o*4,o*6,o*8,o*12,i,i*2,i*3,i*4,i*5,i*6,i*7,i*8,i*9,i*10,i*15,r,r*2,r*3,r*4,r*6,s,s*2,s*5,s*10,s*25,s*50,s*100]),h=[[s,nw,ke,ke,ke,ke,ke,ke,1],[i*28,"{MMM}",b_,ke,ke,ke,ke,ke,1],[i,ow,b_,ke,ke,ke,ke,ke,1],[o,"{h}"+iw,ul,ke,Ms,ke,ke,ke,1],[n,Fr,ul,ke,Ms,ke,ke,ke,1],[t,v_,ul+" "+Fr,ke,Ms+" "+Fr,ke,y_,ke,1],[e,v_+".{fff}",ul+" "+Fr,ke,Ms+" "+Fr,ke,y_,ke,1]];function w($){return(y,T,P,W,V,K)=>{let D=[],q=V>=s,E=V>=r&&V<s,le=$(P),B=Ae(le*e,3),ue=np(le.getFullYear(),q?0:le.getMonth(),E||q?1:le.getDate()),ne=Ae(ue*e,3);if(E||q){let de=E?V/r:0,te=q?V/s:0,F=B==ne?B:Ae(np(ue.getFullYear()+te,ue.getMonth()+de,1)*e,3),se=new Date(ct(F/e)),z=se.getFullYear(),Z=se.getMonth();for(let J=0;F<=W;J++){let ge=np(z+te*J,Z+de*J,1),U=ge-$(Ae(ge*e,3));F=Ae((+ge+U)*e,3),F<=W&&D.push(F)}}else{let de=V>=i?i:V,te=an(P)-an(B),F=ne+te+_l(B-ne,de);D.push(F);let se=$(F),z=se.getHours()+se.getMinutes()/n+se.getSeconds()/o,Z=V/o,J=y.axes[T]._space,ge=K/J;for(;F=Ae(F+V,e==1?0:3),!(F>W);)if(Z>1){let U=an(Ae(z+Z,6))%24,_e=$(F).getHours()-U;_e>1&&(_e=-1),F-=_e*o,z=(z+Z)%24;let Se=D[D.length-1];Ae((F-Se)/V,3)*ge>=.7&&D.push(F)}else D.push(F)}return D}}return[p,h,w]}var[Ux,Jx,qx]=rw(1),[Vx,Kx,Gx]=rw(.001);Os(2,-53,53,[1]);function k_(e,t){return e.map(n=>n.map((o,i)=>i==0||i==8||o==null?o:t(i==1||n[8]==0?o:n[1]+o)))}function x_(e,t){return(n,o,i,r,s)=>{let c=t.find(P=>s>=P[0])||t[t.length-1],p,h,w,$,y,T;return o.map(P=>{let W=e(P),V=W.getFullYear(),K=W.getMonth(),D=W.getDate(),q=W.getHours(),E=W.getMinutes(),le=W.getSeconds(),B=V!=p&&c[2]||K!=h&&c[3]||D!=w&&c[4]||q!=$&&c[5]||E!=y&&c[6]||le!=T&&c[7]||c[1];return p=V,h=K,w=D,$=q,y=E,T=le,B(W)})}}function Yx(e,t){let n=vp(t);return(o,i,r,s,c)=>i.map(p=>n(e(p)))}function np(e,t,n){return new Date(e,t,n)}function S_(e,t){return t(e)}var Zx="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function T_(e,t){return(n,o,i,r)=>r==null?gp:t(e(o))}function Qx(e,t){let n=e.series[t];return n.width?n.stroke(e,t):n.points.width?n.points.stroke(e,t):null}function Xx(e,t){return e.series[t].fill(e,t)}var e1={show:!0,live:!0,isolate:!1,mount:$x,markers:{show:!0,width:2,stroke:Qx,fill:Xx,dash:"solid"},idx:null,idxs:null,values:[]};function t1(e,t){let n=e.cursor.points,o=kn(),i=n.size(e,t);Be(o,As,i),Be(o,Ds,i);let r=i/-2;Be(o,"marginLeft",r),Be(o,"marginTop",r);let s=n.width(e,t,i);return s&&Be(o,"borderWidth",s),o}function n1(e,t){let n=e.series[t].points;return n._fill||n._stroke}function o1(e,t){let n=e.series[t].points;return n._stroke||n._fill}function i1(e,t){return e.series[t].points.size}var op=[0,0];function r1(e,t,n){return op[0]=t,op[1]=n,op}function cl(e,t,n,o=!0){return i=>{i.button==0&&(!o||i.target==t)&&n(i)}}function ip(e,t,n,o=!0){return i=>{(!o||i.target==t)&&n(i)}}var s1={show:!0,x:!0,y:!0,lock:!1,move:r1,points:{one:!1,show:t1,size:i1,width:0,stroke:o1,fill:n1},bind:{mousedown:cl,mouseup:cl,click:cl,dblclick:cl,mousemove:ip,mouseleave:ip,mouseenter:ip},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(e,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(e,t,n,o,i)=>o-i,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},sw={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},xp=it({},sw,{filter:q_}),aw=it({},xp,{size:10}),lw=it({},sw,{show:!1}),Sp='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',uw="bold "+Sp,cw=1.5,P_={show:!0,scale:"x",stroke:hp,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:uw,side:2,grid:xp,ticks:aw,border:lw,font:Sp,lineGap:cw,rotate:0},a1="Value",l1="Time",R_={show:!0,scale:"x",auto:!1,sorted:1,min:Re,max:-Re,idxs:[]};function u1(e,t,n,o,i){return t.map(r=>r==null?"":bp(r))}function c1(e,t,n,o,i,r,s){let c=[],p=Vo.get(i)||0;n=s?n:Ae(_l(n,i),p);for(let h=n;h<=o;h=Ae(h+i,p))c.push(Object.is(h,-0)?0:h);return c}function cp(e,t,n,o,i,r,s){let c=[],p=e.scales[e.axes[t].scale].log,h=p==10?$o:j_,w=an(h(n));i=Lr(p,w),p==10&&(i=Ti[Nn(i,Ti)]);let $=n,y=i*p;p==10&&(y=Ti[Nn(y,Ti)]);do c.push($),$=$+i,p==10&&!Vo.has($)&&($=Ae($,Vo.get(i))),$>=y&&(i=$,y=i*p,p==10&&(y=Ti[Nn(y,Ti)]));while($<=o);return c}function p1(e,t,n,o,i,r,s){let p=e.scales[e.axes[t].scale].asinh,h=o>p?cp(e,t,Nt(p,n),o,i):[p],w=o>=0&&n<=0?[0]:[];return(n<-p?cp(e,t,Nt(p,-o),-n,i):[p]).reverse().map(y=>-y).concat(w,h)}var pw=/./,m1=/[12357]/,d1=/[125]/,A_=/1/,pp=(e,t,n,o)=>e.map((i,r)=>t==4&&i==0||r%o==0&&n.test(i.toExponential()[i<0?1:0])?i:null);function f1(e,t,n,o,i){let r=e.axes[n],s=r.scale,c=e.scales[s],p=e.valToPos,h=r._space,w=p(10,s),$=p(9,s)-w>=h?pw:p(7,s)-w>=h?m1:p(5,s)-w>=h?d1:A_;if($==A_){let y=pt(p(1,s)-w);if(y<h)return pp(t.slice().reverse(),c.distr,$,xn(h/y)).reverse()}return pp(t,c.distr,$,1)}function h1(e,t,n,o,i){let r=e.axes[n],s=r.scale,c=r._space,p=e.valToPos,h=pt(p(1,s)-p(2,s));return h<c?pp(t.slice().reverse(),3,pw,xn(c/h)).reverse():t}function g1(e,t,n,o){return o==null?gp:t==null?"":bp(t)}var D_={show:!0,scale:"y",stroke:hp,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:uw,side:3,grid:xp,ticks:aw,border:lw,font:Sp,lineGap:cw,rotate:0};function _1(e,t){let n=3+(e||1)*2;return Ae(n*t,3)}function w1(e,t){let{scale:n,idxs:o}=e.series[0],i=e._data[0],r=e.valToPos(i[o[0]],n,!0),s=e.valToPos(i[o[1]],n,!0),c=pt(s-r),p=e.series[t],h=c/(p.points.space*ye);return o[1]-o[0]<=h}var M_={scale:null,auto:!0,sorted:0,min:Re,max:-Re},mw=(e,t,n,o,i)=>i,E_={show:!0,auto:!0,sorted:0,gaps:mw,alpha:1,facets:[it({},M_,{scale:"x"}),it({},M_,{scale:"y"})]},F_={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:mw,alpha:1,points:{show:w1,filter:null},values:null,min:Re,max:-Re,idxs:[],path:null,clip:null};function $1(e,t,n,o,i){return n/10}var dw={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},b1=it({},dw,{time:!1,ori:1}),O_={};function fw(e,t){let n=O_[e];return n||(n={key:e,plots:[],sub(o){n.plots.push(o)},unsub(o){n.plots=n.plots.filter(i=>i!=o)},pub(o,i,r,s,c,p,h){for(let w=0;w<n.plots.length;w++)n.plots[w]!=i&&n.plots[w].pub(o,i,r,s,c,p,h)}},e!=null&&(O_[e]=n)),n}var Ir=1,mp=2;function Di(e,t,n){let o=e.mode,i=e.series[t],r=o==2?e._data[t]:e._data,s=e.scales,c=e.bbox,p=r[0],h=o==2?r[1]:r[t],w=o==2?s[i.facets[0].scale]:s[e.series[0].scale],$=o==2?s[i.facets[1].scale]:s[i.scale],y=c.left,T=c.top,P=c.width,W=c.height,V=e.valToPosH,K=e.valToPosV;return w.ori==0?n(i,p,h,w,$,V,K,y,T,P,W,bl,Nr,vl,gw,ww):n(i,p,h,w,$,K,V,T,y,W,P,yl,zr,Rp,_w,$w)}function Tp(e,t){let n=0,o=0,i=$e(e.bands,yp);for(let r=0;r<i.length;r++){let s=i[r];s.series[0]==t?n=s.dir:s.series[1]==t&&(s.dir==1?o|=1:o|=2)}return[n,o==1?-1:o==2?1:o==3?2:0]}function y1(e,t,n,o,i){let r=e.mode,s=e.series[t],c=r==2?s.facets[1].scale:s.scale,p=e.scales[c];return i==-1?p.min:i==1?p.max:p.distr==3?p.dir==1?p.min:p.max:0}function bo(e,t,n,o,i,r){return Di(e,t,(s,c,p,h,w,$,y,T,P,W,V)=>{let K=s.pxRound,D=h.dir*(h.ori==0?1:-1),q=h.ori==0?Nr:zr,E,le;D==1?(E=n,le=o):(E=o,le=n);let B=K($(c[E],h,W,T)),ue=K(y(p[E],w,V,P)),ne=K($(c[le],h,W,T)),de=K(y(r==1?w.max:w.min,w,V,P)),te=new Path2D(i);return q(te,ne,de),q(te,B,de),q(te,B,ue),te})}function $l(e,t,n,o,i,r){let s=null;if(e.length>0){s=new Path2D;let c=t==0?vl:Rp,p=n;for(let $=0;$<e.length;$++){let y=e[$];if(y[1]>y[0]){let T=y[0]-p;T>0&&c(s,p,o,T,o+r),p=y[1]}}let h=n+i-p,w=10;h>0&&c(s,p,o-w/2,h,o+r+w)}return s}function v1(e,t,n){let o=e[e.length-1];o&&o[0]==t?o[1]=n:e.push([t,n])}function Pp(e,t,n,o,i,r,s){let c=[],p=e.length;for(let h=i==1?n:o;h>=n&&h<=o;h+=i)if(t[h]===null){let $=h,y=h;if(i==1)for(;++h<=o&&t[h]===null;)y=h;else for(;--h>=n&&t[h]===null;)y=h;let T=r(e[$]),P=y==$?T:r(e[y]),W=$-i;T=s<=0&&W>=0&&W<p?r(e[W]):T;let K=y+i;P=s>=0&&K>=0&&K<p?r(e[K]):P,P>=T&&c.push([T,P])}return c}function L_(e){return e==0?J_:e==1?ct:t=>Si(t,e)}function hw(e){let t=e==0?bl:yl,n=e==0?(i,r,s,c,p,h)=>{i.arcTo(r,s,c,p,h)}:(i,r,s,c,p,h)=>{i.arcTo(s,r,p,c,h)},o=e==0?(i,r,s,c,p)=>{i.rect(r,s,c,p)}:(i,r,s,c,p)=>{i.rect(s,r,p,c)};return(i,r,s,c,p,h=0,w=0)=>{h==0&&w==0?o(i,r,s,c,p):(h=zn(h,c/2,p/2),w=zn(w,c/2,p/2),t(i,r+h,s),n(i,r+c,s,r+c,s+p,h),n(i,r+c,s+p,r,s+p,w),n(i,r,s+p,r,s,w),n(i,r,s,r+c,s,h),i.closePath())}}var bl=(e,t,n)=>{e.moveTo(t,n)},yl=(e,t,n)=>{e.moveTo(n,t)},Nr=(e,t,n)=>{e.lineTo(t,n)},zr=(e,t,n)=>{e.lineTo(n,t)},vl=hw(0),Rp=hw(1),gw=(e,t,n,o,i,r)=>{e.arc(t,n,o,i,r)},_w=(e,t,n,o,i,r)=>{e.arc(n,t,o,i,r)},ww=(e,t,n,o,i,r,s)=>{e.bezierCurveTo(t,n,o,i,r,s)},$w=(e,t,n,o,i,r,s)=>{e.bezierCurveTo(n,t,i,o,s,r)};function bw(e){return(t,n,o,i,r)=>Di(t,n,(s,c,p,h,w,$,y,T,P,W,V)=>{let{pxRound:K,points:D}=s,q,E;h.ori==0?(q=bl,E=gw):(q=yl,E=_w);let le=Ae(D.width*ye,3),B=(D.size-D.width)/2*ye,ue=Ae(B*2,3),ne=new Path2D,de=new Path2D,{left:te,top:F,width:se,height:z}=t.bbox;vl(de,te-ue,F-ue,se+ue*2,z+ue*2);let Z=J=>{if(p[J]!=null){let ge=K($(c[J],h,W,T)),U=K(y(p[J],w,V,P));q(ne,ge+B,U),E(ne,ge,U,B,0,pl*2)}};if(r)r.forEach(Z);else for(let J=o;J<=i;J++)Z(J);return{stroke:le>0?ne:null,fill:ne,clip:de,flags:Ir|mp}})}function yw(e){return(t,n,o,i,r,s)=>{o!=i&&(r!=o&&s!=o&&e(t,n,o),r!=i&&s!=i&&e(t,n,i),e(t,n,s))}}var k1=yw(Nr),x1=yw(zr);function vw(e){let t=$e(e?.alignGaps,0);return(n,o,i,r)=>Di(n,o,(s,c,p,h,w,$,y,T,P,W,V)=>{[i,r]=hl(p,i,r);let K=s.pxRound,D=z=>K($(z,h,W,T)),q=z=>K(y(z,w,V,P)),E,le;h.ori==0?(E=Nr,le=k1):(E=zr,le=x1);let B=h.dir*(h.ori==0?1:-1),ue={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Ir},ne=ue.stroke,de=!1;if(r-i>=W*4){let z=H=>n.posToVal(H,h.key,!0),Z=null,J=null,ge,U,zt,Ne=D(c[B==1?i:r]),_e=D(c[i]),Se=D(c[r]),ce=z(B==1?_e+1:Se-1);for(let H=B==1?i:r;H>=i&&H<=r;H+=B){let rt=c[H],ze=(B==1?rt<ce:rt>ce)?Ne:D(rt),ve=p[H];ze==Ne?ve!=null?(U=ve,Z==null?(E(ne,ze,q(U)),ge=Z=J=U):U<Z?Z=U:U>J&&(J=U)):ve===null&&(de=!0):(Z!=null&&le(ne,Ne,q(Z),q(J),q(ge),q(U)),ve!=null?(U=ve,E(ne,ze,q(U)),Z=J=ge=U):(Z=J=null,ve===null&&(de=!0)),Ne=ze,ce=z(Ne+B))}Z!=null&&Z!=J&&zt!=Ne&&le(ne,Ne,q(Z),q(J),q(ge),q(U))}else for(let z=B==1?i:r;z>=i&&z<=r;z+=B){let Z=p[z];Z===null?de=!0:Z!=null&&E(ne,D(c[z]),q(Z))}let[F,se]=Tp(n,o);if(s.fill!=null||F!=0){let z=ue.fill=new Path2D(ne),Z=s.fillTo(n,o,s.min,s.max,F),J=q(Z),ge=D(c[i]),U=D(c[r]);B==-1&&([U,ge]=[ge,U]),E(z,U,J),E(z,ge,J)}if(!s.spanGaps){let z=[];de&&z.push(...Pp(c,p,i,r,B,D,t)),ue.gaps=z=s.gaps(n,o,i,r,z),ue.clip=$l(z,h.ori,T,P,W,V)}return se!=0&&(ue.band=se==2?[bo(n,o,i,r,ne,-1),bo(n,o,i,r,ne,1)]:bo(n,o,i,r,ne,se)),ue})}function S1(e){let t=$e(e.align,1),n=$e(e.ascDesc,!1),o=$e(e.alignGaps,0),i=$e(e.extend,!1);return(r,s,c,p)=>Di(r,s,(h,w,$,y,T,P,W,V,K,D,q)=>{[c,p]=hl($,c,p);let E=h.pxRound,{left:le,width:B}=r.bbox,ue=_e=>E(P(_e,y,D,V)),ne=_e=>E(W(_e,T,q,K)),de=y.ori==0?Nr:zr,te={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Ir},F=te.stroke,se=y.dir*(y.ori==0?1:-1),z=ne($[se==1?c:p]),Z=ue(w[se==1?c:p]),J=Z,ge=Z;i&&t==-1&&(ge=le,de(F,ge,z)),de(F,Z,z);for(let _e=se==1?c:p;_e>=c&&_e<=p;_e+=se){let Se=$[_e];if(Se==null)continue;let ce=ue(w[_e]),H=ne(Se);t==1?de(F,ce,z):de(F,J,H),de(F,ce,H),z=H,J=ce}let U=J;i&&t==1&&(U=le+B,de(F,U,z));let[zt,Ne]=Tp(r,s);if(h.fill!=null||zt!=0){let _e=te.fill=new Path2D(F),Se=h.fillTo(r,s,h.min,h.max,zt),ce=ne(Se);de(_e,U,ce),de(_e,ge,ce)}if(!h.spanGaps){let _e=[];_e.push(...Pp(w,$,c,p,se,ue,o));let Se=h.width*ye/2,ce=n||t==1?Se:-Se,H=n||t==-1?-Se:Se;_e.forEach(rt=>{rt[0]+=ce,rt[1]+=H}),te.gaps=_e=h.gaps(r,s,c,p,_e),te.clip=$l(_e,y.ori,V,K,D,q)}return Ne!=0&&(te.band=Ne==2?[bo(r,s,c,p,F,-1),bo(r,s,c,p,F,1)]:bo(r,s,c,p,F,Ne)),te})}function C_(e,t,n,o,i,r,s=Re){if(e.length>1){let c=null;for(let p=0,h=1/0;p<e.length;p++)if(t[p]!==void 0){if(c!=null){let w=pt(e[p]-e[c]);w<h&&(h=w,s=pt(n(e[p],o,i,r)-n(e[c],o,i,r)))}c=p}}return s}function T1(e){e=e||Fs;let t=$e(e.size,[.6,Re,1]),n=e.align||0,o=e.gap||0,i=e.radius;i=i==null?[0,0]:typeof i=="number"?[i,0]:i;let r=he(i),s=1-t[0],c=$e(t[1],Re),p=$e(t[2],1),h=$e(e.disp,Fs),w=$e(e.each,T=>{}),{fill:$,stroke:y}=h;return(T,P,W,V)=>Di(T,P,(K,D,q,E,le,B,ue,ne,de,te,F)=>{let se=K.pxRound,z=n,Z=o*ye,J=c*ye,ge=p*ye,U,zt;E.ori==0?[U,zt]=r(T,P):[zt,U]=r(T,P);let Ne=E.dir*(E.ori==0?1:-1),_e=E.ori==0?vl:Rp,Se=E.ori==0?w:(C,De,st,Oi,Yo,jn,Zo)=>{w(C,De,st,Yo,Oi,Zo,jn)},ce=$e(T.bands,yp).find(C=>C.series[0]==P),H=ce!=null?ce.dir:0,rt=K.fillTo(T,P,K.min,K.max,H),Ot=se(ue(rt,le,F,de)),ze,ve,Sn,Vt=te,Ke=se(K.width*ye),Hn=!1,no=null,un=null,yo=null,Mi=null;$!=null&&(Ke==0||y!=null)&&(Hn=!0,no=$.values(T,P,W,V),un=new Map,new Set(no).forEach(C=>{C!=null&&un.set(C,new Path2D)}),Ke>0&&(yo=y.values(T,P,W,V),Mi=new Map,new Set(yo).forEach(C=>{C!=null&&Mi.set(C,new Path2D)})));let{x0:Ei,size:Hr}=h;if(Ei!=null&&Hr!=null){z=1,D=Ei.values(T,P,W,V),Ei.unit==2&&(D=D.map(st=>T.posToVal(ne+st*te,E.key,!0)));let C=Hr.values(T,P,W,V);Hr.unit==2?ve=C[0]*te:ve=B(C[0],E,te,ne)-B(0,E,te,ne),Vt=C_(D,q,B,E,te,ne,Vt),Sn=Vt-ve+Z}else Vt=C_(D,q,B,E,te,ne,Vt),Sn=Vt*s+Z,ve=Vt-Sn;Sn<1&&(Sn=0),Ke>=ve/2&&(Ke=0),Sn<5&&(se=J_);let Ls=Sn>0,Ko=Vt-Sn-(Ls?Ke:0);ve=se(up(Ko,ge,J)),ze=(z==0?ve/2:z==Ne?0:ve)-z*Ne*((z==0?Z/2:0)+(Ls?Ke/2:0));let Lt={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},Fi=Hn?null:new Path2D,oo=null;if(ce!=null)oo=T.data[ce.series[1]];else{let{y0:C,y1:De}=h;C!=null&&De!=null&&(q=De.values(T,P,W,V),oo=C.values(T,P,W,V))}let Go=U*ve,ie=zt*ve;for(let C=Ne==1?W:V;C>=W&&C<=V;C+=Ne){let De=q[C];if(De==null)continue;if(oo!=null){let Ht=oo[C]??0;if(De-Ht==0)continue;Ot=ue(Ht,le,F,de)}let st=E.distr!=2||h!=null?D[C]:C,Oi=B(st,E,te,ne),Yo=ue($e(De,rt),le,F,de),jn=se(Oi-ze),Zo=se(Nt(Yo,Ot)),Kt=se(zn(Yo,Ot)),cn=Zo-Kt;if(De!=null){let Ht=De<0?ie:Go,Tn=De<0?Go:ie;Hn?(Ke>0&&yo[C]!=null&&_e(Mi.get(yo[C]),jn,Kt+an(Ke/2),ve,Nt(0,cn-Ke),Ht,Tn),no[C]!=null&&_e(un.get(no[C]),jn,Kt+an(Ke/2),ve,Nt(0,cn-Ke),Ht,Tn)):_e(Fi,jn,Kt+an(Ke/2),ve,Nt(0,cn-Ke),Ht,Tn),Se(T,P,C,jn-Ke/2,Kt,ve+Ke,cn)}}return Ke>0?Lt.stroke=Hn?Mi:Fi:Hn||(Lt._fill=K.width==0?K._fill:K._stroke??K._fill,Lt.width=0),Lt.fill=Hn?un:Fi,Lt})}function P1(e,t){let n=$e(t?.alignGaps,0);return(o,i,r,s)=>Di(o,i,(c,p,h,w,$,y,T,P,W,V,K)=>{[r,s]=hl(h,r,s);let D=c.pxRound,q=U=>D(y(U,w,V,P)),E=U=>D(T(U,$,K,W)),le,B,ue;w.ori==0?(le=bl,ue=Nr,B=ww):(le=yl,ue=zr,B=$w);let ne=w.dir*(w.ori==0?1:-1),de=q(p[ne==1?r:s]),te=de,F=[],se=[];for(let U=ne==1?r:s;U>=r&&U<=s;U+=ne)if(h[U]!=null){let Ne=p[U],_e=q(Ne);F.push(te=_e),se.push(E(h[U]))}let z={stroke:e(F,se,le,ue,B,D),fill:null,clip:null,band:null,gaps:null,flags:Ir},Z=z.stroke,[J,ge]=Tp(o,i);if(c.fill!=null||J!=0){let U=z.fill=new Path2D(Z),zt=c.fillTo(o,i,c.min,c.max,J),Ne=E(zt);ue(U,te,Ne),ue(U,de,Ne)}if(!c.spanGaps){let U=[];U.push(...Pp(p,h,r,s,ne,q,n)),z.gaps=U=c.gaps(o,i,r,s,U),z.clip=$l(U,w.ori,P,W,V,K)}return ge!=0&&(z.band=ge==2?[bo(o,i,r,s,Z,-1),bo(o,i,r,s,Z,1)]:bo(o,i,r,s,Z,ge)),z})}function R1(e){return P1(A1,e)}function A1(e,t,n,o,i,r){let s=e.length;if(s<2)return null;let c=new Path2D;if(n(c,e[0],t[0]),s==2)o(c,e[1],t[1]);else{let p=Array(s),h=Array(s-1),w=Array(s-1),$=Array(s-1);for(let y=0;y<s-1;y++)w[y]=t[y+1]-t[y],$[y]=e[y+1]-e[y],h[y]=w[y]/$[y];p[0]=h[0];for(let y=1;y<s-1;y++)h[y]===0||h[y-1]===0||h[y-1]>0!=h[y]>0?p[y]=0:(p[y]=3*($[y-1]+$[y])/((2*$[y]+$[y-1])/h[y-1]+($[y]+2*$[y-1])/h[y]),isFinite(p[y])||(p[y]=0));p[s-1]=h[s-2];for(let y=0;y<s-1;y++)i(c,e[y]+$[y]/3,t[y]+p[y]*$[y]/3,e[y+1]-$[y]/3,t[y+1]-p[y+1]*$[y]/3,e[y+1],t[y+1])}return c}var dp=new Set;function W_(){for(let e of dp)e.syncRect(!0)}Br&&(Ri(ux,Or,W_),Ri(cx,Or,W_,!0),Ri(ml,Or,()=>{Tt.pxRatio=ye}));var D1=vw(),M1=bw();function I_(e,t,n,o){return(o?[e[0],e[1]].concat(e.slice(2)):[e[0]].concat(e.slice(1))).map((r,s)=>fp(r,s,t,n))}function E1(e,t){return e.map((n,o)=>o==0?{}:it({},t,n))}function fp(e,t,n,o){return it({},t==0?n:o,e)}function kw(e,t,n){return t==null?Cr:[t,n]}var F1=kw;function O1(e,t,n){return t==null?Cr:dl(t,n,$p,!0)}function xw(e,t,n,o){return t==null?Cr:gl(t,n,e.scales[o].log,!1)}var L1=xw;function Sw(e,t,n,o){return t==null?Cr:wp(t,n,e.scales[o].log,!1)}var C1=Sw;function W1(e,t,n,o,i){let r=Nt(g_(e),g_(t)),s=t-e,c=Nn(i/o*s,n);do{let p=n[c],h=o*p/s;if(h>=i&&r+(p<5?Vo.get(p):0)<=17)return[p,h]}while(++c<n.length);return[0,0]}function B_(e){let t,n;return e=e.replace(/(\d+)px/,(o,i)=>(t=ct((n=+i)*ye))+"px"),[e,t,n]}function I1(e){e.show&&[e.font,e.labelFont].forEach(t=>{let n=Ae(t[2]*ye,1);t[0]=t[0].replace(/[0-9.]+px/,n+"px"),t[1]=n})}function Tt(e,t,n){let o={mode:$e(e.mode,1)},i=o.mode;function r(a,m,d,g){let _=m.valToPct(a);return g+d*(m.dir==-1?1-_:_)}function s(a,m,d,g){let _=m.valToPct(a);return g+d*(m.dir==-1?_:1-_)}function c(a,m,d,g){return m.ori==0?r(a,m,d,g):s(a,m,d,g)}o.valToPosH=r,o.valToPosV=s;let p=!1;o.status=0;let h=o.root=kn(Jk);if(e.id!=null&&(h.id=e.id),sn(h,e.class),e.title){let a=kn(Kk,h);a.textContent=e.title}let w=Bn("canvas"),$=o.ctx=w.getContext("2d"),y=kn(Gk,h);Ri("click",y,a=>{a.target===P&&(Ce!=Ji||He!=qi)&&yt.click(o,a)},!0);let T=o.under=kn(Yk,y);y.appendChild(w);let P=o.over=kn(Zk,y);e=Wr(e);let W=+$e(e.pxAlign,1),V=L_(W);(e.plugins||[]).forEach(a=>{a.opts&&(e=a.opts(o,e)||e)});let K=e.ms||.001,D=o.series=i==1?I_(e.series||[],R_,F_,!1):E1(e.series||[null],E_),q=o.axes=I_(e.axes||[],P_,D_,!0),E=o.scales={},le=o.bands=e.bands||[];le.forEach(a=>{a.fill=he(a.fill||null),a.dir=$e(a.dir,-1)});let B=i==2?D[1].facets[0].scale:D[0].scale,ue={axes:Uw,series:Bw},ne=(e.drawOrder||["axes","series"]).map(a=>ue[a]);function de(a){let m=a.distr==3?d=>$o(d>0?d:a.clamp(o,d,a.min,a.max,a.key)):a.distr==4?d=>tp(d,a.asinh):a.distr==100?d=>a.fwd(d):d=>d;return d=>{let g=m(d),{_min:_,_max:b}=a,k=b-_;return(g-_)/k}}function te(a){let m=E[a];if(m==null){let d=(e.scales||Fs)[a]||Fs;if(d.from!=null){te(d.from);let g=it({},E[d.from],d,{key:a});g.valToPct=de(g),E[a]=g}else{m=E[a]=it({},a==B?dw:b1,d),m.key=a;let g=m.time,_=m.range,b=qo(_);if((a!=B||i==2&&!g)&&(b&&(_[0]==null||_[1]==null)&&(_={min:_[0]==null?d_:{mode:1,hard:_[0],soft:_[0]},max:_[1]==null?d_:{mode:1,hard:_[1],soft:_[1]}},b=!1),!b&&wl(_))){let k=_;_=(x,R,O)=>R==null?Cr:dl(R,O,k)}m.range=he(_||(g?F1:a==B?m.distr==3?L1:m.distr==4?C1:kw:m.distr==3?xw:m.distr==4?Sw:O1)),m.auto=he(b?!1:m.auto),m.clamp=he(m.clamp||$1),m._min=m._max=null,m.valToPct=de(m)}}}te("x"),te("y"),i==1&&D.forEach(a=>{te(a.scale)}),q.forEach(a=>{te(a.scale)});for(let a in e.scales)te(a);let F=E[B],se=F.distr,z,Z;F.ori==0?(sn(h,qk),z=r,Z=s):(sn(h,Vk),z=s,Z=r);let J={};for(let a in E){let m=E[a];(m.min!=null||m.max!=null)&&(J[a]={min:m.min,max:m.max},m.min=m.max=null)}let ge=e.tzDate||(a=>new Date(ct(a/K))),U=e.fmtDate||vp,zt=K==1?qx(ge):Gx(ge),Ne=x_(ge,k_(K==1?Jx:Kx,U)),_e=T_(ge,S_(Zx,U)),Se=[],ce=o.legend=it({},e1,e.legend),H=o.cursor=it({},s1,{drag:{y:i==2}},e.cursor),rt=ce.show,Ot=H.show,ze=ce.markers;ce.idxs=Se,ze.width=he(ze.width),ze.dash=he(ze.dash),ze.stroke=he(ze.stroke),ze.fill=he(ze.fill);let ve,Sn,Vt,Ke=[],Hn=[],no,un=!1,yo={};if(ce.live){let a=D[1]?D[1].values:null;un=a!=null,no=un?a(o,1,0):{_:0};for(let m in no)yo[m]=gp}if(rt)if(ve=Bn("table",ox,h),Vt=Bn("tbody",null,ve),ce.mount(o,ve),un){Sn=Bn("thead",null,ve,Vt);let a=Bn("tr",null,Sn);Bn("th",null,a);for(var Mi in no)Bn("th",e_,a).textContent=Mi}else sn(ve,rx),ce.live&&sn(ve,ix);let Ei={show:!0},Hr={show:!1};function Ls(a,m){if(m==0&&(un||!ce.live||i==2))return Cr;let d=[],g=Bn("tr",sx,Vt,Vt.childNodes[m]);sn(g,a.class),a.show||sn(g,Pi);let _=Bn("th",null,g);if(ze.show){let x=kn(ax,_);if(m>0){let R=ze.width(o,m);R&&(x.style.border=R+"px "+ze.dash(o,m)+" "+ze.stroke(o,m)),x.style.background=ze.fill(o,m)}}let b=kn(e_,_);a.label instanceof HTMLElement?b.appendChild(a.label):b.textContent=a.label,m>0&&(ze.show||(b.style.color=a.width>0?ze.stroke(o,m):ze.fill(o,m)),Lt("click",_,x=>{if(H._lock)return;Xo(x);let R=D.indexOf(a);if((x.ctrlKey||x.metaKey)!=ce.isolate){let O=D.some((L,I)=>I>0&&I!=R&&L.show);D.forEach((L,I)=>{I>0&&Jn(I,O?I==R?Ei:Hr:Ei,!0,et.setSeries)})}else Jn(R,{show:!a.show},!0,et.setSeries)},!1),Ci&&Lt(i_,_,x=>{H._lock||(Xo(x),Jn(D.indexOf(a),Ki,!0,et.setSeries))},!1));for(var k in no){let x=Bn("td",lx,g);x.textContent="--",d.push(x)}return[g,d]}let Ko=new Map;function Lt(a,m,d,g=!0){let _=Ko.get(m)||{},b=H.bind[a](o,m,d,g);b&&(Ri(a,m,_[a]=b),Ko.set(m,_))}function Fi(a,m,d){let g=Ko.get(m)||{};for(let _ in g)(a==null||_==a)&&(lp(_,m,g[_]),delete g[_]);a==null&&Ko.delete(m)}let oo=0,Go=0,ie=0,C=0,De=0,st=0,Oi=De,Yo=st,jn=ie,Zo=C,Kt=0,cn=0,Ht=0,Tn=0;o.bbox={};let xl=!1,Cs=!1,Li=!1,Qo=!1,Ws=!1,pn=!1;function Sl(a,m,d){(d||a!=o.width||m!=o.height)&&Ep(a,m),zi(!1),Li=!0,Cs=!0,Hi()}function Ep(a,m){o.width=oo=ie=a,o.height=Go=C=m,De=st=0,Ew(),Fw();let d=o.bbox;Kt=d.left=Si(De*ye,.5),cn=d.top=Si(st*ye,.5),Ht=d.width=Si(ie*ye,.5),Tn=d.height=Si(C*ye,.5)}let Aw=3;function Dw(){let a=!1,m=0;for(;!a;){m++;let d=Hw(m),g=jw(m);a=m==Aw||d&&g,a||(Ep(o.width,o.height),Cs=!0)}}function Mw({width:a,height:m}){Sl(a,m)}o.setSize=Mw;function Ew(){let a=!1,m=!1,d=!1,g=!1;q.forEach((_,b)=>{if(_.show&&_._show){let{side:k,_size:x}=_,R=k%2,O=_.label!=null?_.labelSize:0,L=x+O;L>0&&(R?(ie-=L,k==3?(De+=L,g=!0):d=!0):(C-=L,k==0?(st+=L,a=!0):m=!0))}}),ei[0]=a,ei[1]=d,ei[2]=m,ei[3]=g,ie-=vo[1]+vo[3],De+=vo[3],C-=vo[2]+vo[0],st+=vo[0]}function Fw(){let a=De+ie,m=st+C,d=De,g=st;function _(b,k){switch(b){case 1:return a+=k,a-k;case 2:return m+=k,m-k;case 3:return d-=k,d+k;case 0:return g-=k,g+k}}q.forEach((b,k)=>{if(b.show&&b._show){let x=b.side;b._pos=_(x,b._size),b.label!=null&&(b._lpos=_(x,b.labelSize))}})}if(H.dataIdx==null){let a=H.hover,m=a.skip=new Set(a.skip??[]);m.add(void 0);let d=a.prox=he(a.prox),g=a.bias??=0;H.dataIdx=(_,b,k,x)=>{if(b==0)return k;let R=k,O=d(_,b,k,x)??Re,L=O>=0&&O<Re,I=F.ori==0?ie:C,Q=H.left,be=t[0],we=t[b];if(m.has(we[k])){R=null;let pe=null,G=null,j;if(g==0||g==-1)for(j=k;pe==null&&j-- >0;)m.has(we[j])||(pe=j);if(g==0||g==1)for(j=k;G==null&&j++<we.length;)m.has(we[j])||(G=j);if(pe!=null||G!=null)if(L){let Ie=pe==null?-1/0:z(be[pe],F,I,0),Ze=G==null?1/0:z(be[G],F,I,0),_t=Q-Ie,Te=Ze-Q;_t<=Te?_t<=O&&(R=pe):Te<=O&&(R=G)}else R=G==null?pe:pe==null?G:k-pe<=G-k?pe:G}else L&&pt(Q-z(be[k],F,I,0))>O&&(R=null);return R}}let Xo=a=>{H.event=a};H.idxs=Se,H._lock=!1;let Pt=H.points;Pt.show=he(Pt.show),Pt.size=he(Pt.size),Pt.stroke=he(Pt.stroke),Pt.width=he(Pt.width),Pt.fill=he(Pt.fill);let Un=o.focus=it({},e.focus||{alpha:.3},H.focus),Ci=Un.prox>=0,Wi=Ci&&Pt.one,mn=[],Ii=[],Bi=[];function Fp(a,m){let d=Pt.show(o,m);if(d instanceof HTMLElement)return sn(d,nx),sn(d,a.class),to(d,-10,-10,ie,C),P.insertBefore(d,mn[m]),d}function Op(a,m){if(i==1||m>0){let d=i==1&&E[a.scale].time,g=a.value;a.value=d?$_(g)?T_(ge,S_(g,U)):g||_e:g||g1,a.label=a.label||(d?l1:a1)}if(Wi||m>0){a.width=a.width==null?1:a.width,a.paths=a.paths||D1||bx,a.fillTo=he(a.fillTo||y1),a.pxAlign=+$e(a.pxAlign,W),a.pxRound=L_(a.pxAlign),a.stroke=he(a.stroke||null),a.fill=he(a.fill||null),a._stroke=a._fill=a._paths=a._focus=null;let d=_1(Nt(1,a.width),1),g=a.points=it({},{size:d,width:Nt(1,d*.2),stroke:a.stroke,space:d*2,paths:M1,_stroke:null,_fill:null},a.points);g.show=he(g.show),g.filter=he(g.filter),g.fill=he(g.fill),g.stroke=he(g.stroke),g.paths=he(g.paths),g.pxAlign=a.pxAlign}if(rt){let d=Ls(a,m);Ke.splice(m,0,d[0]),Hn.splice(m,0,d[1]),ce.values.push(null)}if(Ot){Se.splice(m,0,null);let d=null;Wi?m==0&&(d=Fp(a,m)):m>0&&(d=Fp(a,m)),mn.splice(m,0,d),Ii.splice(m,0,0),Bi.splice(m,0,0)}gt("addSeries",m)}function Ow(a,m){m=m??D.length,a=i==1?fp(a,m,R_,F_):fp(a,m,{},E_),D.splice(m,0,a),Op(D[m],m)}o.addSeries=Ow;function Lw(a){if(D.splice(a,1),rt){ce.values.splice(a,1),Hn.splice(a,1);let m=Ke.splice(a,1)[0];Fi(null,m.firstChild),m.remove()}Ot&&(Se.splice(a,1),mn.splice(a,1)[0].remove(),Ii.splice(a,1),Bi.splice(a,1)),gt("delSeries",a)}o.delSeries=Lw;let ei=[!1,!1,!1,!1];function Cw(a,m){if(a._show=a.show,a.show){let d=a.side%2,g=E[a.scale];g==null&&(a.scale=d?D[1].scale:B,g=E[a.scale]);let _=g.time;a.size=he(a.size),a.space=he(a.space),a.rotate=he(a.rotate),qo(a.incrs)&&a.incrs.forEach(k=>{!Vo.has(k)&&Vo.set(k,K_(k))}),a.incrs=he(a.incrs||(g.distr==2?Hx:_?K==1?Ux:Vx:Ti)),a.splits=he(a.splits||(_&&g.distr==1?zt:g.distr==3?cp:g.distr==4?p1:c1)),a.stroke=he(a.stroke),a.grid.stroke=he(a.grid.stroke),a.ticks.stroke=he(a.ticks.stroke),a.border.stroke=he(a.border.stroke);let b=a.values;a.values=qo(b)&&!qo(b[0])?he(b):_?qo(b)?x_(ge,k_(b,U)):$_(b)?Yx(ge,b):b||Ne:b||u1,a.filter=he(a.filter||(g.distr>=3&&g.log==10?f1:g.distr==3&&g.log==2?h1:q_)),a.font=B_(a.font),a.labelFont=B_(a.labelFont),a._size=a.size(o,null,m,0),a._space=a._rotate=a._incrs=a._found=a._splits=a._values=null,a._size>0&&(ei[m]=!0,a._el=kn(Qk,y))}}function jr(a,m,d,g){let[_,b,k,x]=d,R=m%2,O=0;return R==0&&(x||b)&&(O=m==0&&!_||m==2&&!k?ct(P_.size/3):0),R==1&&(_||k)&&(O=m==1&&!b||m==3&&!x?ct(D_.size/2):0),O}let Lp=o.padding=(e.padding||[jr,jr,jr,jr]).map(a=>he($e(a,jr))),vo=o._padding=Lp.map((a,m)=>a(o,m,ei,0)),bt,mt=null,dt=null,Is=i==1?D[0].idxs:null,Pn=null,Ur=!1;function Cp(a,m){if(t=a??[],o.data=o._data=t,i==2){bt=0;for(let d=1;d<D.length;d++)bt+=t[d][0].length}else{t.length==0&&(o.data=o._data=t=[[]]),Pn=t[0],bt=Pn.length;let d=t;if(se==2){d=t.slice();let g=d[0]=Array(bt);for(let _=0;_<bt;_++)g[_]=_}o._data=t=d}if(zi(!0),gt("setData"),se==2&&(Li=!0),m!==!1){let d=F;d.auto(o,Ur)?Tl():xo(B,d.min,d.max),Qo=Qo||H.left>=0,pn=!0,Hi()}}o.setData=Cp;function Tl(){Ur=!0;let a,m;i==1&&(bt>0?(mt=Is[0]=0,dt=Is[1]=bt-1,a=t[0][mt],m=t[0][dt],se==2?(a=mt,m=dt):a==m&&(se==3?[a,m]=gl(a,a,F.log,!1):se==4?[a,m]=wp(a,a,F.log,!1):F.time?m=a+ct(86400/K):[a,m]=dl(a,m,$p,!0))):(mt=Is[0]=a=null,dt=Is[1]=m=null)),xo(B,a,m)}let Bs,Ni,Pl,Rl,Al,Dl,Ml,El,Fl,jt;function Wp(a,m,d,g,_,b){a??=n_,d??=yp,g??="butt",_??=n_,b??="round",a!=Bs&&($.strokeStyle=Bs=a),_!=Ni&&($.fillStyle=Ni=_),m!=Pl&&($.lineWidth=Pl=m),b!=Al&&($.lineJoin=Al=b),g!=Dl&&($.lineCap=Dl=g),d!=Rl&&$.setLineDash(Rl=d)}function Ip(a,m,d,g){m!=Ni&&($.fillStyle=Ni=m),a!=Ml&&($.font=Ml=a),d!=El&&($.textAlign=El=d),g!=Fl&&($.textBaseline=Fl=g)}function Ol(a,m,d,g,_=0){if(g.length>0&&a.auto(o,Ur)&&(m==null||m.min==null)){let b=$e(mt,0),k=$e(dt,g.length-1),x=d.min==null?fx(g,b,k,_,a.distr==3):[d.min,d.max];a.min=zn(a.min,d.min=x[0]),a.max=Nt(a.max,d.max=x[1])}}let Bp={min:null,max:null};function Ww(){for(let g in E){let _=E[g];J[g]==null&&(_.min==null||J[B]!=null&&_.auto(o,Ur))&&(J[g]=Bp)}for(let g in E){let _=E[g];J[g]==null&&_.from!=null&&J[_.from]!=null&&(J[g]=Bp)}J[B]!=null&&zi(!0);let a={};for(let g in J){let _=J[g];if(_!=null){let b=a[g]=Wr(E[g],kx);if(_.min!=null)it(b,_);else if(g!=B||i==2)if(bt==0&&b.from==null){let k=b.range(o,null,null,g);b.min=k[0],b.max=k[1]}else b.min=Re,b.max=-Re}}if(bt>0){D.forEach((g,_)=>{if(i==1){let b=g.scale,k=J[b];if(k==null)return;let x=a[b];if(_==0){let R=x.range(o,x.min,x.max,b);x.min=R[0],x.max=R[1],mt=Nn(x.min,t[0]),dt=Nn(x.max,t[0]),dt-mt>1&&(t[0][mt]<x.min&&mt++,t[0][dt]>x.max&&dt--),g.min=Pn[mt],g.max=Pn[dt]}else g.show&&g.auto&&Ol(x,k,g,t[_],g.sorted);g.idxs[0]=mt,g.idxs[1]=dt}else if(_>0&&g.show&&g.auto){let[b,k]=g.facets,x=b.scale,R=k.scale,[O,L]=t[_],I=a[x],Q=a[R];I!=null&&Ol(I,J[x],b,O,b.sorted),Q!=null&&Ol(Q,J[R],k,L,k.sorted),g.min=k.min,g.max=k.max}});for(let g in a){let _=a[g],b=J[g];if(_.from==null&&(b==null||b.min==null)){let k=_.range(o,_.min==Re?null:_.min,_.max==-Re?null:_.max,g);_.min=k[0],_.max=k[1]}}}for(let g in a){let _=a[g];if(_.from!=null){let b=a[_.from];if(b.min==null)_.min=_.max=null;else{let k=_.range(o,b.min,b.max,g);_.min=k[0],_.max=k[1]}}}let m={},d=!1;for(let g in a){let _=a[g],b=E[g];if(b.min!=_.min||b.max!=_.max){b.min=_.min,b.max=_.max;let k=b.distr;b._min=k==3?$o(b.min):k==4?tp(b.min,b.asinh):k==100?b.fwd(b.min):b.min,b._max=k==3?$o(b.max):k==4?tp(b.max,b.asinh):k==100?b.fwd(b.max):b.max,m[g]=d=!0}}if(d){D.forEach((g,_)=>{i==2?_>0&&m.y&&(g._paths=null):m[g.scale]&&(g._paths=null)});for(let g in m)Li=!0,gt("setScale",g);Ot&&H.left>=0&&(Qo=pn=!0)}for(let g in J)J[g]=null}function Iw(a){let m=up(mt-1,0,bt-1),d=up(dt+1,0,bt-1);for(;a[m]==null&&m>0;)m--;for(;a[d]==null&&d<bt-1;)d++;return[m,d]}function Bw(){if(bt>0){let a=D.some(m=>m._focus)&&jt!=Un.alpha;a&&($.globalAlpha=jt=Un.alpha),D.forEach((m,d)=>{if(d>0&&m.show&&(Np(d,!1),Np(d,!0),m._paths==null)){let g=jt;jt!=m.alpha&&($.globalAlpha=jt=m.alpha);let _=i==2?[0,t[d][0].length-1]:Iw(t[d]);m._paths=m.paths(o,d,_[0],_[1]),jt!=g&&($.globalAlpha=jt=g)}}),D.forEach((m,d)=>{if(d>0&&m.show){let g=jt;jt!=m.alpha&&($.globalAlpha=jt=m.alpha),m._paths!=null&&zp(d,!1);{let _=m._paths!=null?m._paths.gaps:null,b=m.points.show(o,d,mt,dt,_),k=m.points.filter(o,d,b,_);(b||k)&&(m.points._paths=m.points.paths(o,d,mt,dt,k),zp(d,!0))}jt!=g&&($.globalAlpha=jt=g),gt("drawSeries",d)}}),a&&($.globalAlpha=jt=1)}}function Np(a,m){let d=m?D[a].points:D[a];d._stroke=d.stroke(o,a),d._fill=d.fill(o,a)}function zp(a,m){let d=m?D[a].points:D[a],{stroke:g,fill:_,clip:b,flags:k,_stroke:x=d._stroke,_fill:R=d._fill,_width:O=d.width}=d._paths;O=Ae(O*ye,3);let L=null,I=O%2/2;m&&R==null&&(R=O>0?"#fff":x);let Q=d.pxAlign==1&&I>0;if(Q&&$.translate(I,I),!m){let be=Kt-O/2,we=cn-O/2,pe=Ht+O,G=Tn+O;L=new Path2D,L.rect(be,we,pe,G)}m?Ll(x,O,d.dash,d.cap,R,g,_,k,b):Nw(a,x,O,d.dash,d.cap,R,g,_,k,L,b),Q&&$.translate(-I,-I)}function Nw(a,m,d,g,_,b,k,x,R,O,L){let I=!1;R!=0&&le.forEach((Q,be)=>{if(Q.series[0]==a){let we=D[Q.series[1]],pe=t[Q.series[1]],G=(we._paths||Fs).band;qo(G)&&(G=Q.dir==1?G[0]:G[1]);let j,Ie=null;we.show&&G&&gx(pe,mt,dt)?(Ie=Q.fill(o,be)||b,j=we._paths.clip):G=null,Ll(m,d,g,_,Ie,k,x,R,O,L,j,G),I=!0}}),I||Ll(m,d,g,_,b,k,x,R,O,L)}let Hp=Ir|mp;function Ll(a,m,d,g,_,b,k,x,R,O,L,I){Wp(a,m,d,g,_),(R||O||I)&&($.save(),R&&$.clip(R),O&&$.clip(O)),I?(x&Hp)==Hp?($.clip(I),L&&$.clip(L),zs(_,k),Ns(a,b,m)):x&mp?(zs(_,k),$.clip(I),Ns(a,b,m)):x&Ir&&($.save(),$.clip(I),L&&$.clip(L),zs(_,k),$.restore(),Ns(a,b,m)):(zs(_,k),Ns(a,b,m)),(R||O||I)&&$.restore()}function Ns(a,m,d){d>0&&(m instanceof Map?m.forEach((g,_)=>{$.strokeStyle=Bs=_,$.stroke(g)}):m!=null&&a&&$.stroke(m))}function zs(a,m){m instanceof Map?m.forEach((d,g)=>{$.fillStyle=Ni=g,$.fill(d)}):m!=null&&a&&$.fill(m)}function zw(a,m,d,g){let _=q[a],b;if(g<=0)b=[0,0];else{let k=_._space=_.space(o,a,m,d,g),x=_._incrs=_.incrs(o,a,m,d,g,k);b=W1(m,d,x,g,k)}return _._found=b}function Cl(a,m,d,g,_,b,k,x,R,O){let L=k%2/2;W==1&&$.translate(L,L),Wp(x,k,R,O,x),$.beginPath();let I,Q,be,we,pe=_+(g==0||g==3?-b:b);d==0?(Q=_,we=pe):(I=_,be=pe);for(let G=0;G<a.length;G++)m[G]!=null&&(d==0?I=be=a[G]:Q=we=a[G],$.moveTo(I,Q),$.lineTo(be,we));$.stroke(),W==1&&$.translate(-L,-L)}function Hw(a){let m=!0;return q.forEach((d,g)=>{if(!d.show)return;let _=E[d.scale];if(_.min==null){d._show&&(m=!1,d._show=!1,zi(!1));return}else d._show||(m=!1,d._show=!0,zi(!1));let b=d.side,k=b%2,{min:x,max:R}=_,[O,L]=zw(g,x,R,k==0?ie:C);if(L==0)return;let I=_.distr==2,Q=d._splits=d.splits(o,g,x,R,O,L,I),be=_.distr==2?Q.map(j=>Pn[j]):Q,we=_.distr==2?Pn[Q[1]]-Pn[Q[0]]:O,pe=d._values=d.values(o,d.filter(o,be,g,L,we),g,L,we);d._rotate=b==2?d.rotate(o,pe,g,L):0;let G=d._size;d._size=xn(d.size(o,pe,g,a)),G!=null&&d._size!=G&&(m=!1)}),m}function jw(a){let m=!0;return Lp.forEach((d,g)=>{let _=d(o,g,ei,a);_!=vo[g]&&(m=!1),vo[g]=_}),m}function Uw(){for(let a=0;a<q.length;a++){let m=q[a];if(!m.show||!m._show)continue;let d=m.side,g=d%2,_,b,k=m.stroke(o,a),x=d==0||d==3?-1:1,[R,O]=m._found;if(m.label!=null){let Wt=m.labelGap*x,Zt=ct((m._lpos+Wt)*ye);Ip(m.labelFont[0],k,"center",d==2?"top":t_),$.save(),g==1?(_=b=0,$.translate(Zt,ct(cn+Tn/2)),$.rotate((d==3?-pl:pl)/2)):(_=ct(Kt+Ht/2),b=Zt);let oi=U_(m.label)?m.label(o,a,R,O):m.label;$.fillText(oi,_,b),$.restore()}if(O==0)continue;let L=E[m.scale],I=g==0?Ht:Tn,Q=g==0?Kt:cn,be=m._splits,we=L.distr==2?be.map(Wt=>Pn[Wt]):be,pe=L.distr==2?Pn[be[1]]-Pn[be[0]]:R,G=m.ticks,j=m.border,Ie=G.show?G.size:0,Ze=ct(Ie*ye),_t=ct((m.alignTo==2?m._size-Ie-m.gap:m.gap)*ye),Te=m._rotate*-pl/180,Qe=V(m._pos*ye),Gt=(Ze+_t)*x,Ct=Qe+Gt;b=g==0?Ct:0,_=g==1?Ct:0;let dn=m.font[0],Rn=m.align==1?Er:m.align==2?Qc:Te>0?Er:Te<0?Qc:g==0?"center":d==3?Qc:Er,Vn=Te||g==1?"middle":d==2?"top":t_;Ip(dn,k,Rn,Vn);let Yt=m.font[1]*m.lineGap,fn=be.map(Wt=>V(c(Wt,L,I,Q))),An=m._values;for(let Wt=0;Wt<An.length;Wt++){let Zt=An[Wt];if(Zt!=null){g==0?_=fn[Wt]:b=fn[Wt],Zt=""+Zt;let oi=Zt.indexOf(`
`)==-1?[Zt]:Zt.split(/\n/gm);for(let It=0;It<oi.length;It++){let am=oi[It];Te?($.save(),$.translate(_,b+It*Yt),$.rotate(Te),$.fillText(am,0,0),$.restore()):$.fillText(am,_,b+It*Yt)}}}G.show&&Cl(fn,G.filter(o,we,a,O,pe),g,d,Qe,Ze,Ae(G.width*ye,3),G.stroke(o,a),G.dash,G.cap);let Kn=m.grid;Kn.show&&Cl(fn,Kn.filter(o,we,a,O,pe),g,g==0?2:1,g==0?cn:Kt,g==0?Tn:Ht,Ae(Kn.width*ye,3),Kn.stroke(o,a),Kn.dash,Kn.cap),j.show&&Cl([Qe],[1],g==0?1:0,g==0?1:2,g==1?cn:Kt,g==1?Tn:Ht,Ae(j.width*ye,3),j.stroke(o,a),j.dash,j.cap)}gt("drawAxes")}function zi(a){D.forEach((m,d)=>{d>0&&(m._paths=null,a&&(i==1?(m.min=null,m.max=null):m.facets.forEach(g=>{g.min=null,g.max=null})))})}let Hs=!1,Wl=!1,Jr=[];function Jw(){Wl=!1;for(let a=0;a<Jr.length;a++)gt(...Jr[a]);Jr.length=0}function Hi(){Hs||(Dx(jp),Hs=!0)}function qw(a,m=!1){Hs=!0,Wl=m,a(o),jp(),m&&Jr.length>0&&queueMicrotask(Jw)}o.batch=qw;function jp(){if(xl&&(Ww(),xl=!1),Li&&(Dw(),Li=!1),Cs){if(Be(T,Er,De),Be(T,"top",st),Be(T,As,ie),Be(T,Ds,C),Be(P,Er,De),Be(P,"top",st),Be(P,As,ie),Be(P,Ds,C),Be(y,As,oo),Be(y,Ds,Go),w.width=ct(oo*ye),w.height=ct(Go*ye),q.forEach(({_el:a,_show:m,_size:d,_pos:g,side:_})=>{if(a!=null)if(m){let b=_===3||_===0?d:0,k=_%2==1;Be(a,k?"left":"top",g-b),Be(a,k?"width":"height",d),Be(a,k?"top":"left",k?st:De),Be(a,k?"height":"width",k?C:ie),ap(a,Pi)}else sn(a,Pi)}),Bs=Ni=Pl=Al=Dl=Ml=El=Fl=Rl=null,jt=1,Kr(!0),De!=Oi||st!=Yo||ie!=jn||C!=Zo){zi(!1);let a=ie/jn,m=C/Zo;if(Ot&&!Qo&&H.left>=0){H.left*=a,H.top*=m,ji&&to(ji,ct(H.left),0,ie,C),Ui&&to(Ui,0,ct(H.top),ie,C);for(let d=0;d<mn.length;d++){let g=mn[d];g!=null&&(Ii[d]*=a,Bi[d]*=m,to(g,xn(Ii[d]),xn(Bi[d]),ie,C))}}if(We.show&&!Ws&&We.left>=0&&We.width>0){We.left*=a,We.width*=a,We.top*=m,We.height*=m;for(let d in jl)Be(Vi,d,We[d])}Oi=De,Yo=st,jn=ie,Zo=C}gt("setSize"),Cs=!1}oo>0&&Go>0&&($.clearRect(0,0,w.width,w.height),gt("drawClear"),ne.forEach(a=>a()),gt("draw")),We.show&&Ws&&(js(We),Ws=!1),Ot&&Qo&&(ni(null,!0,!1),Qo=!1),ce.show&&ce.live&&pn&&(zl(),pn=!1),p||(p=!0,o.status=1,gt("ready")),Ur=!1,Hs=!1}o.redraw=(a,m)=>{Li=m||!1,a!==!1?xo(B,F.min,F.max):Hi()};function Il(a,m){let d=E[a];if(d.from==null){if(bt==0){let g=d.range(o,m.min,m.max,a);m.min=g[0],m.max=g[1]}if(m.min>m.max){let g=m.min;m.min=m.max,m.max=g}if(bt>1&&m.min!=null&&m.max!=null&&m.max-m.min<1e-16)return;a==B&&d.distr==2&&bt>0&&(m.min=Nn(m.min,t[0]),m.max=Nn(m.max,t[0]),m.min==m.max&&m.max++),J[a]=m,xl=!0,Hi()}}o.setScale=Il;let Bl,Nl,ji,Ui,Up,Jp,Ji,qi,qp,Vp,Ce,He,ko=!1,yt=H.drag,ft=yt.x,ht=yt.y;Ot&&(H.x&&(Bl=kn(ex,P)),H.y&&(Nl=kn(tx,P)),F.ori==0?(ji=Bl,Ui=Nl):(ji=Nl,Ui=Bl),Ce=H.left,He=H.top);let We=o.select=it({show:!0,over:!0,left:0,width:0,top:0,height:0},e.select),Vi=We.show?kn(Xk,We.over?P:T):null;function js(a,m){if(We.show){for(let d in a)We[d]=a[d],d in jl&&Be(Vi,d,a[d]);m!==!1&&gt("setSelect")}}o.setSelect=js;function Vw(a){if(D[a].show)rt&&ap(Ke[a],Pi);else if(rt&&sn(Ke[a],Pi),Ot){let d=Wi?mn[0]:mn[a];d!=null&&to(d,-10,-10,ie,C)}}function xo(a,m,d){Il(a,{min:m,max:d})}function Jn(a,m,d,g){m.focus!=null&&Qw(a),m.show!=null&&D.forEach((_,b)=>{b>0&&(a==b||a==null)&&(_.show=m.show,Vw(b),i==2?(xo(_.facets[0].scale,null,null),xo(_.facets[1].scale,null,null)):xo(_.scale,null,null),Hi())}),d!==!1&&gt("setSeries",a,m),g&&Gr("setSeries",o,a,m)}o.setSeries=Jn;function Kw(a,m){it(le[a],m)}function Gw(a,m){a.fill=he(a.fill||null),a.dir=$e(a.dir,-1),m=m??le.length,le.splice(m,0,a)}function Yw(a){a==null?le.length=0:le.splice(a,1)}o.addBand=Gw,o.setBand=Kw,o.delBand=Yw;function Zw(a,m){D[a].alpha=m,Ot&&mn[a]!=null&&(mn[a].style.opacity=m),rt&&Ke[a]&&(Ke[a].style.opacity=m)}let io,So,ti,Ki={focus:!0};function Qw(a){if(a!=ti){let m=a==null,d=Un.alpha!=1;D.forEach((g,_)=>{if(i==1||_>0){let b=m||_==0||_==a;g._focus=m?null:b,d&&Zw(_,b?1:Un.alpha)}}),ti=a,d&&Hi()}}rt&&Ci&&Lt(r_,ve,a=>{H._lock||(Xo(a),ti!=null&&Jn(null,Ki,!0,et.setSeries))});function qn(a,m,d){let g=E[m];d&&(a=a/ye-(g.ori==1?st:De));let _=ie;g.ori==1&&(_=C,a=_-a),g.dir==-1&&(a=_-a);let b=g._min,k=g._max,x=a/_,R=b+(k-b)*x,O=g.distr;return O==3?Lr(10,R):O==4?wx(R,g.asinh):O==100?g.bwd(R):R}function Xw(a,m){let d=qn(a,B,m);return Nn(d,t[0],mt,dt)}o.valToIdx=a=>Nn(a,t[0]),o.posToIdx=Xw,o.posToVal=qn,o.valToPos=(a,m,d)=>E[m].ori==0?r(a,E[m],d?Ht:ie,d?Kt:0):s(a,E[m],d?Tn:C,d?cn:0),o.setCursor=(a,m,d)=>{Ce=a.left,He=a.top,ni(null,m,d)};function Kp(a,m){Be(Vi,Er,We.left=a),Be(Vi,As,We.width=m)}function Gp(a,m){Be(Vi,"top",We.top=a),Be(Vi,Ds,We.height=m)}let qr=F.ori==0?Kp:Gp,Vr=F.ori==1?Kp:Gp;function e$(){if(rt&&ce.live)for(let a=i==2?1:0;a<D.length;a++){if(a==0&&un)continue;let m=ce.values[a],d=0;for(let g in m)Hn[a][d++].firstChild.nodeValue=m[g]}}function zl(a,m){if(a!=null&&(a.idxs?a.idxs.forEach((d,g)=>{Se[g]=d}):vx(a.idx)||Se.fill(a.idx),ce.idx=Se[0]),rt&&ce.live){for(let d=0;d<D.length;d++)(d>0||i==1&&!un)&&t$(d,Se[d]);e$()}pn=!1,m!==!1&&gt("setLegend")}o.setLegend=zl;function t$(a,m){let d=D[a],g=a==0&&se==2?Pn:t[a],_;un?_=d.values(o,a,m)??yo:(_=d.value(o,m==null?null:g[m],a,m),_=_==null?yo:{_}),ce.values[a]=_}function ni(a,m,d){qp=Ce,Vp=He,[Ce,He]=H.move(o,Ce,He),H.left=Ce,H.top=He,Ot&&(ji&&to(ji,ct(Ce),0,ie,C),Ui&&to(Ui,0,ct(He),ie,C));let g,_=mt>dt;io=Re,So=null;let b=F.ori==0?ie:C,k=F.ori==1?ie:C;if(Ce<0||bt==0||_){g=H.idx=null;for(let x=0;x<D.length;x++){let R=mn[x];R!=null&&to(R,-10,-10,ie,C)}Ci&&Jn(null,Ki,!0,a==null&&et.setSeries),ce.live&&(Se.fill(g),pn=!0)}else{let x,R,O;i==1&&(x=F.ori==0?Ce:He,R=qn(x,B),g=H.idx=Nn(R,t[0],mt,dt),O=z(t[0][g],F,b,0));let L=-10,I=-10,Q=0,be=0,we=!0,pe="",G="";for(let j=i==2?1:0;j<D.length;j++){let Ie=D[j],Ze=Se[j],_t=Ze==null?null:i==1?t[j][Ze]:t[j][1][Ze],Te=H.dataIdx(o,j,g,R),Qe=Te==null?null:i==1?t[j][Te]:t[j][1][Te];if(pn=pn||Qe!=_t||Te!=Ze,Se[j]=Te,j>0&&Ie.show){let Gt=Te==null?-10:Te==g?O:z(i==1?t[0][Te]:t[j][0][Te],F,b,0),Ct=Qe==null?-10:Z(Qe,i==1?E[Ie.scale]:E[Ie.facets[1].scale],k,0);if(Ci&&Qe!=null){let dn=F.ori==1?Ce:He,Rn=pt(Un.dist(o,j,Te,Ct,dn));if(Rn<io){let Vn=Un.bias;if(Vn!=0){let Yt=qn(dn,Ie.scale),fn=Qe>=0?1:-1,An=Yt>=0?1:-1;An==fn&&(An==1?Vn==1?Qe>=Yt:Qe<=Yt:Vn==1?Qe<=Yt:Qe>=Yt)&&(io=Rn,So=j)}else io=Rn,So=j}}if(pn||Wi){let dn,Rn;F.ori==0?(dn=Gt,Rn=Ct):(dn=Ct,Rn=Gt);let Vn,Yt,fn,An,Kn,Wt,Zt=!0,oi=Pt.bbox;if(oi!=null){Zt=!1;let It=oi(o,j);fn=It.left,An=It.top,Vn=It.width,Yt=It.height}else fn=dn,An=Rn,Vn=Yt=Pt.size(o,j);if(Wt=Pt.fill(o,j),Kn=Pt.stroke(o,j),Wi)j==So&&io<=Un.prox&&(L=fn,I=An,Q=Vn,be=Yt,we=Zt,pe=Wt,G=Kn);else{let It=mn[j];It!=null&&(Ii[j]=fn,Bi[j]=An,m_(It,Vn,Yt,Zt),c_(It,Wt,Kn),to(It,xn(fn),xn(An),ie,C))}}}}if(Wi){let j=Un.prox,Ie=ti==null?io<=j:io>j||So!=ti;if(pn||Ie){let Ze=mn[0];Ze!=null&&(Ii[0]=L,Bi[0]=I,m_(Ze,Q,be,we),c_(Ze,pe,G),to(Ze,xn(L),xn(I),ie,C))}}}if(We.show&&ko)if(a!=null){let[x,R]=et.scales,[O,L]=et.match,[I,Q]=a.cursor.sync.scales,be=a.cursor.drag;if(ft=be._x,ht=be._y,ft||ht){let{left:we,top:pe,width:G,height:j}=a.select,Ie=a.scales[I].ori,Ze=a.posToVal,_t,Te,Qe,Gt,Ct,dn=x!=null&&O(x,I),Rn=R!=null&&L(R,Q);dn&&ft?(Ie==0?(_t=we,Te=G):(_t=pe,Te=j),Qe=E[x],Gt=z(Ze(_t,I),Qe,b,0),Ct=z(Ze(_t+Te,I),Qe,b,0),qr(zn(Gt,Ct),pt(Ct-Gt))):qr(0,b),Rn&&ht?(Ie==1?(_t=we,Te=G):(_t=pe,Te=j),Qe=E[R],Gt=Z(Ze(_t,Q),Qe,k,0),Ct=Z(Ze(_t+Te,Q),Qe,k,0),Vr(zn(Gt,Ct),pt(Ct-Gt))):Vr(0,k)}else Ul()}else{let x=pt(qp-Up),R=pt(Vp-Jp);if(F.ori==1){let Q=x;x=R,R=Q}ft=yt.x&&x>=yt.dist,ht=yt.y&&R>=yt.dist;let O=yt.uni;O!=null?ft&&ht&&(ft=x>=O,ht=R>=O,!ft&&!ht&&(R>x?ht=!0:ft=!0)):yt.x&&yt.y&&(ft||ht)&&(ft=ht=!0);let L,I;ft&&(F.ori==0?(L=Ji,I=Ce):(L=qi,I=He),qr(zn(L,I),pt(I-L)),ht||Vr(0,k)),ht&&(F.ori==1?(L=Ji,I=Ce):(L=qi,I=He),Vr(zn(L,I),pt(I-L)),ft||qr(0,b)),!ft&&!ht&&(qr(0,0),Vr(0,0))}if(yt._x=ft,yt._y=ht,a==null){if(d){if(sm!=null){let[x,R]=et.scales;et.values[0]=x!=null?qn(F.ori==0?Ce:He,x):null,et.values[1]=R!=null?qn(F.ori==1?Ce:He,R):null}Gr(Xc,o,Ce,He,ie,C,g)}if(Ci){let x=d&&et.setSeries,R=Un.prox;ti==null?io<=R&&Jn(So,Ki,!0,x):io>R?Jn(null,Ki,!0,x):So!=ti&&Jn(So,Ki,!0,x)}}pn&&(ce.idx=g,zl()),m!==!1&&gt("setCursor")}let To=null;Object.defineProperty(o,"rect",{get(){return To==null&&Kr(!1),To}});function Kr(a=!1){a?To=null:(To=P.getBoundingClientRect(),gt("syncRect",To))}function Yp(a,m,d,g,_,b,k){H._lock||ko&&a!=null&&a.movementX==0&&a.movementY==0||(Hl(a,m,d,g,_,b,k,!1,a!=null),a!=null?ni(null,!0,!0):ni(m,!0,!1))}function Hl(a,m,d,g,_,b,k,x,R){if(To==null&&Kr(!1),Xo(a),a!=null)d=a.clientX-To.left,g=a.clientY-To.top;else{if(d<0||g<0){Ce=-10,He=-10;return}let[O,L]=et.scales,I=m.cursor.sync,[Q,be]=I.values,[we,pe]=I.scales,[G,j]=et.match,Ie=m.axes[0].side%2==1,Ze=F.ori==0?ie:C,_t=F.ori==1?ie:C,Te=Ie?b:_,Qe=Ie?_:b,Gt=Ie?g:d,Ct=Ie?d:g;if(we!=null?d=G(O,we)?c(Q,E[O],Ze,0):-10:d=Ze*(Gt/Te),pe!=null?g=j(L,pe)?c(be,E[L],_t,0):-10:g=_t*(Ct/Qe),F.ori==1){let dn=d;d=g,g=dn}}R&&(m==null||m.cursor.event.type==Xc)&&((d<=1||d>=ie-1)&&(d=Si(d,ie)),(g<=1||g>=C-1)&&(g=Si(g,C))),x?(Up=d,Jp=g,[Ji,qi]=H.move(o,d,g)):(Ce=d,He=g)}let jl={width:0,height:0,left:0,top:0};function Ul(){js(jl,!1)}let Zp,Qp,Xp,em;function tm(a,m,d,g,_,b,k){ko=!0,ft=ht=yt._x=yt._y=!1,Hl(a,m,d,g,_,b,k,!0,!1),a!=null&&(Lt(ep,rp,nm,!1),Gr(o_,o,Ji,qi,ie,C,null));let{left:x,top:R,width:O,height:L}=We;Zp=x,Qp=R,Xp=O,em=L}function nm(a,m,d,g,_,b,k){ko=yt._x=yt._y=!1,Hl(a,m,d,g,_,b,k,!1,!0);let{left:x,top:R,width:O,height:L}=We,I=O>0||L>0,Q=Zp!=x||Qp!=R||Xp!=O||em!=L;if(I&&Q&&js(We),yt.setScale&&I&&Q){let be=x,we=O,pe=R,G=L;if(F.ori==1&&(be=R,we=L,pe=x,G=O),ft&&xo(B,qn(be,B),qn(be+we,B)),ht)for(let j in E){let Ie=E[j];j!=B&&Ie.from==null&&Ie.min!=Re&&xo(j,qn(pe+G,j),qn(pe,j))}Ul()}else H.lock&&(H._lock=!H._lock,ni(m,!0,a!=null));a!=null&&(Fi(ep,rp),Gr(ep,o,Ce,He,ie,C,null))}function n$(a,m,d,g,_,b,k){if(H._lock)return;Xo(a);let x=ko;if(ko){let R=!0,O=!0,L=10,I,Q;F.ori==0?(I=ft,Q=ht):(I=ht,Q=ft),I&&Q&&(R=Ce<=L||Ce>=ie-L,O=He<=L||He>=C-L),I&&R&&(Ce=Ce<Ji?0:ie),Q&&O&&(He=He<qi?0:C),ni(null,!0,!0),ko=!1}Ce=-10,He=-10,Se.fill(null),ni(null,!0,!0),x&&(ko=x)}function om(a,m,d,g,_,b,k){H._lock||(Xo(a),Tl(),Ul(),a!=null&&Gr(s_,o,Ce,He,ie,C,null))}function im(){q.forEach(I1),Sl(o.width,o.height,!0)}Ri(ml,Or,im);let Gi={};Gi.mousedown=tm,Gi.mousemove=Yp,Gi.mouseup=nm,Gi.dblclick=om,Gi.setSeries=(a,m,d,g)=>{let _=et.match[2];d=_(o,m,d),d!=-1&&Jn(d,g,!0,!1)},Ot&&(Lt(o_,P,tm),Lt(Xc,P,Yp),Lt(i_,P,a=>{Xo(a),Kr(!1)}),Lt(r_,P,n$),Lt(s_,P,om),dp.add(o),o.syncRect=Kr);let Us=o.hooks=e.hooks||{};function gt(a,m,d){Wl?Jr.push([a,m,d]):a in Us&&Us[a].forEach(g=>{g.call(null,o,m,d)})}(e.plugins||[]).forEach(a=>{for(let m in a.hooks)Us[m]=(Us[m]||[]).concat(a.hooks[m])});let rm=(a,m,d)=>d,et=it({key:null,setSeries:!1,filters:{pub:__,sub:__},scales:[B,D[1]?D[1].scale:null],match:[w_,w_,rm],values:[null,null]},H.sync);et.match.length==2&&et.match.push(rm),H.sync=et;let sm=et.key,Jl=fw(sm);function Gr(a,m,d,g,_,b,k){et.filters.pub(a,m,d,g,_,b,k)&&Jl.pub(a,m,d,g,_,b,k)}Jl.sub(o);function o$(a,m,d,g,_,b,k){et.filters.sub(a,m,d,g,_,b,k)&&Gi[a](null,m,d,g,_,b,k)}o.pub=o$;function i$(){Jl.unsub(o),dp.delete(o),Ko.clear(),lp(ml,Or,im),h.remove(),ve?.remove(),gt("destroy")}o.destroy=i$;function ql(){gt("init",e,t),Cp(t||e.data,!1),J[B]?Il(B,J[B]):Tl(),Ws=We.show&&(We.width>0||We.height>0),Qo=pn=!0,Sl(e.width,e.height)}return D.forEach(Op),q.forEach(Cw),n?n instanceof HTMLElement?(n.appendChild(h),ql()):n(o,ql):ql(),o}Tt.assign=it;Tt.fmtNum=bp;Tt.rangeNum=dl;Tt.rangeLog=gl;Tt.rangeAsinh=wp;Tt.orient=Di;Tt.pxRatio=ye;Tt.join=Ax;Tt.fmtDate=vp,Tt.tzDate=Nx;Tt.sync=fw;{Tt.addGap=v1,Tt.clipGaps=$l;let e=Tt.paths={points:bw};e.linear=vw,e.stepped=S1,e.bars=T1,e.spline=R1}var Ap=class extends HTMLElement{#t;#n;#e=0;#r=new ResizeObserver(()=>this.#o());set gauge(t){t!==this.#n&&(this.#n=t,this.#i())}set line(t){t!==this.#e&&(this.#e=t,this.#t?.redraw(!1))}connectedCallback(){this.#r.observe(this),this.#i()}disconnectedCallback(){this.#r.disconnect(),this.#t?.destroy(),this.#t=void 0}#o(){this.clientWidth&&this.#t?.setSize({width:this.clientWidth,height:260})}#i(){let t=this.#n?.pockets[0]?.levels??[];if(!this.isConnected||!t.length)return;this.#t?.destroy();let n=[0,...t.map(s=>s.depth_mm)],o=[0,...t.map(s=>s.volume_ml)],i=getComputedStyle(this).color,r={stroke:i,font:"16px system-ui",labelFont:"16px system-ui",labelSize:26,grid:{stroke:"#8884"}};this.#t=new Tt({width:this.clientWidth||320,height:260,legend:{show:!1},cursor:{show:!1},scales:{x:{time:!1}},axes:[{...r,label:"depth, mm"},{...r,label:"volume, ml",size:60}],pxAlign:0,series:[{},{stroke:i,width:2.5,pxAlign:0,points:{show:!1}}],hooks:{draw:[s=>this.#s(s)]}},[n,o],this)}#s(t){let n=t.valToPos(this.#e,"x",!0),{ctx:o,bbox:i}=t;o.save(),o.strokeStyle=getComputedStyle(this).color,o.lineWidth=2*devicePixelRatio,o.setLineDash([8,5]),o.beginPath(),o.moveTo(n,i.top),o.lineTo(n,i.top+i.height),o.stroke(),o.restore()}};customElements.define("level-curve",Ap);var kl=Math.PI/8,B1=500,Dp=class extends HTMLElement{#t=[];#n=0;#e;#r=!1;#o=!1;#i="";#s=!1;#a="";#l="Looking at it ...";#c=0;#d=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([t])=>this.#w(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#t=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#a="",URL.revokeObjectURL(this.#i)}#w(t){this.#d=t,t&&requestIdleCallback(()=>{this.#$()},{timeout:1500})}async#$(){if(this.#e||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#r)){this.#r=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#r=!1,this.#u(),await this.#m()}}#g(){let t=this.#e||this.#o;!this.#d||!t||this.#p()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#m()},B1))}#p(){let{of:t}=this.#t[this.#n],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#m(){let t=this.#p();if(t!==this.#a){try{let n=await er(JSON.parse(t));if(t!==this.#p()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#i),this.#i=URL.createObjectURL(n)):this.#e?.show(pa(await n.arrayBuffer())),this.#a=t,this.#l=""}catch(n){if(!(n instanceof X))throw n;this.#l=n.message}this.#u()}}#_(t){t(),this.#l="Looking at it ...",this.#u(),this.#m()}#u(){let t=l`<div class="choice" role="group" aria-label="What to look at">
      ${this.#t.map((o,i)=>l`<button
            type="button"
            aria-pressed=${i===this.#n?"true":"false"}
            @click=${()=>this.#_(()=>this.#n=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=l`<p class="aside" role="status">${this.#l}</p>`;ui(l`${t} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let t=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return l`<canvas
        role="img"
        aria-label="${this.#t[this.#n]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-kl)}>Turn left</button>
        <button type="button" @click=${t(kl)}>Turn right</button>
        <button type="button" @click=${n(kl)}>From above</button>
        <button type="button" @click=${n(-kl)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return l`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#i?l`<img
              src=${this.#i}
              alt="${this.#t[this.#n].words}, drawn to scale with its measures"
            />`:f}`}};customElements.define("solid-panel",Dp);var Tw=document.getElementById("page");function Pw(){return l` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      To the figures
    </button>
    ${xg(sl)} ${Xd()}
    <main id="main" tabindex="-1" class=${u.is_old&&u.view!=="start"?"old-now":""}>
      ${u.fault?l`${u.view==="start"?f:l`<h1>Brimwright</h1>`}
              <p class="alarm" role="alert">${u.fault}</p>`:f}
      ${u.view==="run"?Sg():u.view==="formula"?Rg():u.view==="start"?Xg():u.fault?f:l`<h1>Brimwright</h1>
                    <p>Reading the runs of this folder ...</p>`}
    </main>
    <p class="unseen" role="status">${u.announcement}</p>`}Rm(()=>{ui(Pw(),Tw),Rw()});addEventListener("resize",Rw);ui(Pw(),Tw);document.addEventListener("keydown",e=>{!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||u.view==="run"&&(e.preventDefault(),(e.shiftKey?ca:sr)())});document.addEventListener("visibilitychange",()=>{u.view!=="run"&&u.view!=="formula"||(document.visibilityState==="visible"?Wu().catch(()=>{}):nt(u.run)&&En())});function N1(){if(!u.run.file)return Mp();S({fault:void 0}),nt(u.run)&&En(),vt()}function Mp(){S({fault:void 0}),Yd().catch(e=>{S({fault:z1(e)}),e instanceof X&&e.may_pass&&window.setTimeout(Mp,2e3)})}function z1(e){return e instanceof X&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}function Rw(){let e=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${e}px`)}Wd();Fm(N1);Mp();
